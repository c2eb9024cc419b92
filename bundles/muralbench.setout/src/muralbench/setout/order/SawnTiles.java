// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Shares rectangles out over as few tiles of one size as it can find: exactly for up to {@link SawPlan#MOST}
 * rectangles. More are laid largest first, each on the tile that it fills best, and then the emptiest tiles are shared
 * out anew as long as that saves one.
 */
final class SawnTiles {
  /** On how many tiles with room a rectangle is tried, the fullest first. */
  private static final int TRIED = 256;

  /** How often the emptiest tiles are shared out anew at most. */
  private static final int AGAIN = 20;

  private final double width;
  private final double height;
  private final double kerf;
  private final Map<List<SawnRect>, Boolean> known = new HashMap<>();
  private final Map<SawnRect, List<SawnRect>> ways = new HashMap<>();

  SawnTiles(double width, double height, double kerf) {
    this.width = width;
    this.height = height;
    this.kerf = kerf;
  }

  /** Groups of numbers into the list, each group from one tile; every rectangle has to fit on a tile alone. */
  List<List<Integer>> share(List<SawnRect> rects) {
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < rects.size(); i++) {
      all.add(i);
    }
    if (rects.size() <= SawPlan.MOST) {
      return exact(rects, all);
    }
    List<List<Integer>> tiles = largestFirst(rects, all);
    for (int times = 0; times < AGAIN && again(rects, tiles); times++) {
      // Each time has saved a tile.
    }
    return tiles;
  }

  /** The fewest tiles for a few rectangles. */
  private List<List<Integer>> exact(List<SawnRect> rects, List<Integer> chosen) {
    SawPlan plan = new SawPlan(chosen.stream().map(rects::get).toList(), width, height, kerf);
    int[] tiles = new int[1 << chosen.size()];
    int[] last = new int[tiles.length];
    for (int set = 1; set < tiles.length; set++) {
      tiles[set] = Integer.MAX_VALUE;
      int lowest = Integer.lowestOneBit(set);
      for (int part = set; part > 0; part = part - 1 & set) {
        if ((part & lowest) != 0 && plan.fits(part) && tiles[set ^ part] + 1 < tiles[set]) {
          tiles[set] = tiles[set ^ part] + 1;
          last[set] = part;
        }
      }
    }
    List<List<Integer>> groups = new ArrayList<>();
    for (int set = tiles.length - 1; set > 0; set ^= last[set]) {
      int part = last[set];
      groups.add(chosen.stream().filter(number -> (part & 1 << chosen.indexOf(number)) != 0).toList());
    }
    return groups;
  }

  private List<List<Integer>> largestFirst(List<SawnRect> rects, List<Integer> all) {
    List<Integer> order = new ArrayList<>(all);
    order.sort(Comparator.comparingDouble((Integer number) -> -room(rects.get(number))).thenComparing(n -> n));
    TreeMap<Double, List<List<Integer>>> open = new TreeMap<>();
    for (int number : order) {
      List<Integer> tile = best(rects, open, number);
      double left = (width + kerf) * (height + kerf);
      for (int on : tile) {
        left -= room(rects.get(on));
      }
      open.computeIfAbsent(left, any -> new ArrayList<>()).add(tile);
    }
    List<List<Integer>> tiles = new ArrayList<>();
    open.values().forEach(tiles::addAll);
    return tiles;
  }

  /** Takes the fullest tile that a rectangle still fits on out of the open ones, or a new one, and puts it there. */
  private List<Integer> best(List<SawnRect> rects, TreeMap<Double, List<List<Integer>>> open, int number) {
    int tried = 0;
    for (var entry : open.tailMap(room(rects.get(number)) - SawnRect.SAME, true).entrySet()) {
      for (List<Integer> tile : entry.getValue()) {
        if (tried++ == TRIED) {
          return new ArrayList<>(List.of(number));
        }
        if (tile.size() < SawPlan.MOST && pairsFit(rects, tile, number) && fits(rects, tile, number)) {
          entry.getValue().remove(tile);
          if (entry.getValue().isEmpty()) {
            open.remove(entry.getKey());
          }
          tile.add(number);
          return tile;
        }
      }
    }
    return new ArrayList<>(List.of(number));
  }

  /** Whether a rectangle goes with each on a tile alone, which is quickly told and mostly it does not. */
  private boolean pairsFit(List<SawnRect> rects, List<Integer> tile, int number) {
    for (int on : tile) {
      if (!pairFits(turned(rects.get(on)), turned(rects.get(number)))) {
        return false;
      }
    }
    return true;
  }

  private List<SawnRect> turned(SawnRect rect) {
    return ways.computeIfAbsent(rect, any -> rect.quarters(width, height).stream().map(rect::turned).toList());
  }

  private boolean pairFits(List<SawnRect> some, List<SawnRect> others) {
    for (SawnRect one : some) {
      for (SawnRect other : others) {
        boolean across = one.width() + kerf + other.width() <= width + SawnRect.SAME
            && (parted(one, SawnRect.RIGHT, other, SawnRect.LEFT) || parted(other, SawnRect.RIGHT, one, SawnRect.LEFT));
        if (across || one.height() + kerf + other.height() <= height + SawnRect.SAME
            && (parted(one, SawnRect.TOP, other, SawnRect.BOTTOM) || parted(other, SawnRect.TOP, one, SawnRect.BOTTOM))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether the sides of two rectangles that look at each other need no factory edge. */
  private static boolean parted(SawnRect one, int side, SawnRect other, int facing) {
    return !one.needs(side) && !other.needs(facing);
  }

  private boolean fits(List<SawnRect> rects, List<Integer> tile, int number) {
    List<SawnRect> together = new ArrayList<>();
    tile.forEach(on -> together.add(rects.get(on)));
    together.add(rects.get(number));
    return known.computeIfAbsent(together, any -> new SawPlan(together, width, height, kerf).fits());
  }

  /** Shares the emptiest tiles out anew; whether that saved one. */
  private boolean again(List<SawnRect> rects, List<List<Integer>> tiles) {
    tiles.sort(Comparator.comparingDouble((List<Integer> tile) -> tile.stream().mapToDouble(n -> room(rects.get(n)))
        .sum()).thenComparing(tile -> tile.get(0)));
    List<Integer> chosen = new ArrayList<>();
    int taken = 0;
    while (taken < tiles.size() && chosen.size() + tiles.get(taken).size() <= SawPlan.MOST) {
      chosen.addAll(tiles.get(taken++));
    }
    List<List<Integer>> shared = exact(rects, chosen);
    if (shared.size() < taken) {
      tiles.subList(0, taken).clear();
      tiles.addAll(shared);
      return true;
    }
    return false;
  }

  /** What a rectangle takes up with a cut beside and above it, mm². */
  private double room(SawnRect rect) {
    return (rect.width() + kerf) * (rect.height() + kerf);
  }
}
