// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.geometry.Box;

/**
 * All ways to saw some rectangles from one tile by cuts that go right through, each turned as may be: for every subset
 * the smallest rooms that hold it. Exact for this kind of cuts, the only kind that a saw for tile makes well.
 */
final class SawPlan {
  /** The most rectangles that are looked at together. */
  static final int MOST = 8;

  /**
   * A room that holds some of the rectangles.
   *
   * @param factory the sides of the tile that it has to touch
   * @param upright whether the cut between its halves runs up
   * @param quarters the turn of a single rectangle
   * @param item number of a single rectangle, -1 for two halves
   */
  private record Room(double width, double height, int factory, boolean upright, Room first, Room second, int item,
      int quarters) {
    boolean betterThan(Room other) {
      return width <= other.width && height <= other.height && (factory | other.factory) == other.factory;
    }
  }

  private final List<SawnRect> rects;
  private final double width;
  private final double height;
  private final double kerf;
  private final List<List<Room>> rooms;

  /** The ways to saw up to {@link #MOST} rectangles from a tile, mm. */
  SawPlan(List<SawnRect> rects, double width, double height, double kerf) {
    this.rects = List.copyOf(rects);
    this.width = width;
    this.height = height;
    this.kerf = kerf;
    rooms = new ArrayList<>(1 << rects.size());
    rooms.add(List.of());
    for (int set = 1; set < 1 << rects.size(); set++) {
      rooms.add(Integer.bitCount(set) == 1 ? single(Integer.numberOfTrailingZeros(set)) : halves(set));
    }
  }

  /** Whether a subset, one bit for each rectangle, can be sawn from one tile. */
  boolean fits(int set) {
    return !rooms.get(set).isEmpty();
  }

  /** Whether all can. */
  boolean fits() {
    return fits((1 << rects.size()) - 1);
  }

  private List<Room> single(int item) {
    List<Room> found = new ArrayList<>();
    for (int quarters : rects.get(item).quarters(width, height)) {
      SawnRect turned = rects.get(item).turned(quarters);
      add(found, new Room(turned.width(), turned.height(), turned.factory(), false, null, null, item, quarters));
    }
    return found;
  }

  private List<Room> halves(int set) {
    List<Room> found = new ArrayList<>();
    for (int part = set - 1 & set; part > 0; part = part - 1 & set) {
      for (Room first : rooms.get(part)) {
        for (Room second : rooms.get(set ^ part)) {
          beside(first, second, found);
          above(first, second, found);
        }
      }
    }
    return found;
  }

  /** The second room on the right of the first. */
  private void beside(Room first, Room second, List<Room> found) {
    double wide = first.width + kerf + second.width;
    if (wide <= width + SawnRect.SAME && (first.factory & SawnRect.RIGHT) == 0
        && (second.factory & SawnRect.LEFT) == 0) {
      add(found, new Room(wide, Math.max(first.height, second.height), first.factory | second.factory, true, first,
          second, -1, 0));
    }
  }

  /** The second room above the first. */
  private void above(Room first, Room second, List<Room> found) {
    double high = first.height + kerf + second.height;
    if (high <= height + SawnRect.SAME && (first.factory & SawnRect.TOP) == 0
        && (second.factory & SawnRect.BOTTOM) == 0) {
      add(found, new Room(Math.max(first.width, second.width), high, first.factory | second.factory, false, first,
          second, -1, 0));
    }
  }

  private static void add(List<Room> found, Room room) {
    if (found.stream().noneMatch(other -> other.betterThan(room))) {
      found.removeIf(room::betterThan);
      found.add(room);
    }
  }

  /**
   * Where each rectangle of a subset that {@link #fits} lies on the tile, lower left corner at (0, 0), in the order of
   * the bits.
   */
  List<Placed> places(int set) {
    List<Placed> places = new ArrayList<>();
    place(rooms.get(set).get(0), new Box(0, 0, width, height), places);
    places.sort((a, b) -> Integer.compare(a.item, b.item));
    return places;
  }

  /**
   * A rectangle on its tile.
   *
   * @param item its number
   * @param place where it lies
   * @param quarters quarter turns counter-clockwise
   */
  record Placed(int item, Box place, int quarters) {}

  private void place(Room room, Box space, List<Placed> places) {
    if (room.first == null) {
      double left = away(room, SawnRect.RIGHT, SawnRect.LEFT) ? space.maxX() - room.width : space.minX();
      double bottom = away(room, SawnRect.TOP, SawnRect.BOTTOM) ? space.maxY() - room.height : space.minY();
      places.add(new Placed(room.item, new Box(left, bottom, left + room.width, bottom + room.height), room.quarters));
    } else if (room.upright) {
      double cut = space.minX() + room.first.width;
      place(room.first, new Box(space.minX(), space.minY(), cut, space.maxY()), places);
      place(room.second, new Box(cut + kerf, space.minY(), space.maxX(), space.maxY()), places);
    } else {
      double cut = space.minY() + room.first.height;
      place(room.first, new Box(space.minX(), space.minY(), space.maxX(), cut), places);
      place(room.second, new Box(space.minX(), cut + kerf, space.maxX(), space.maxY()), places);
    }
  }

  private static boolean away(Room room, int far, int near) {
    return (room.factory & far) != 0 && (room.factory & near) == 0;
  }
}
