// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The outer edge of a band of border tiles: a rectangle or another polygon with right angles and upright sides, or one
 * straight run. A closed path is walked clockwise from its lower left corner, so that the left side comes first and the
 * band lies to the right of the way. A straight run is walked from its first point; its band, too, lies to the right.
 * Immutable.
 *
 * @param corners the corners in order, mm in the wall plane; of a closed path the first is not repeated
 * @param closed whether the path returns to its first corner
 */
public record BandPath(List<Vec> corners, boolean closed) {
  private static final Messages TEXTS = Messages.of(BandPath.class);

  public BandPath {
    corners = List.copyOf(corners);
    if (corners.size() < 2 || closed && corners.size() < 4) {
      throw new IllegalArgumentException("too few corners for a path: " + corners.size());
    }
  }

  /** The four sides of an upright rectangle: left, top, right, bottom. */
  public static BandPath rectangle(Box box) {
    return new BandPath(List.of(new Vec(box.minX(), box.minY()), new Vec(box.minX(), box.maxY()),
        new Vec(box.maxX(), box.maxY()), new Vec(box.maxX(), box.minY())), true);
  }

  /** One straight run, level or upright, the band to the right of the way. */
  public static BandPath straight(Vec from, Vec to) {
    return new BandPath(List.of(from, to), false);
  }

  /**
   * A polygon with right angles and upright sides, walked either way round and from any corner; a corner in the
   * middle of a straight side is left out.
   *
   * @throws InputException if a side is aslant, or if sides cross, touch or have no length
   */
  public static BandPath polygon(List<Vec> corners) throws InputException {
    List<Vec> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Vec before = corners.get((i + corners.size() - 1) % corners.size());
      Vec after = corners.get((i + 1) % corners.size());
      Vec here = corners.get(i);
      aslant(i, after.minus(here));
      if (Math.abs(here.minus(before).cross(after.minus(here))) > BandSide.UPRIGHT) {
        kept.add(here);
      }
    }
    if (kept.size() < 4 || !simple(kept)) {
      throw refused("/corners", "path.crossing");
    }
    if (Contour.polygon(kept).signedArea() > 0) {
      Collections.reverse(kept);
    }
    Vec first = Collections.min(kept, Comparator.comparingDouble(Vec::y).thenComparingDouble(Vec::x));
    Collections.rotate(kept, -kept.indexOf(first));
    return new BandPath(kept, true);
  }

  private static void aslant(int index, Vec side) throws InputException {
    if (!Double.isFinite(side.length()) || Math.min(Math.abs(side.x()), Math.abs(side.y())) > BandSide.UPRIGHT) {
      throw refused("/corners/" + index, "path.aslant", "side", index + 1);
    }
  }

  /** The sides in order. */
  public List<BandSide> sides() {
    List<BandSide> sides = new ArrayList<>();
    int count = closed ? corners.size() : corners.size() - 1;
    for (int i = 0; i < count; i++) {
      int next = (i + 1) % corners.size();
      sides.add(new BandSide(corners.get(i), corners.get(next), turn(i), turn(next)));
    }
    return sides;
  }

  /** What the outline does at a corner. */
  public BandEnd turn(int corner) {
    if (!closed) {
      return BandEnd.FREE;
    }
    int size = corners.size();
    Vec in = corners.get(corner).minus(corners.get((corner + size - 1) % size));
    Vec out = corners.get((corner + 1) % size).minus(corners.get(corner));
    return in.cross(out) < 0 ? BandEnd.CONVEX : BandEnd.REFLEX;
  }

  /** Whether this is a rectangle. */
  public boolean rectangular() {
    return closed && corners.size() == 4;
  }

  /** The name of a side as it is shown: left, top, right, bottom of a rectangle, else the side's number from 1. */
  public String sideName(int side) {
    if (rectangular()) {
      return TEXTS.text("side." + List.of("left", "top", "right", "bottom").get(side));
    }
    return closed ? TEXTS.text("side.number", "number", side + 1) : TEXTS.text("side.run");
  }

  /** The outline as a closed line, counter-clockwise; only of a closed path. */
  public Contour contour() {
    return Contour.polygon(corners).counterClockwise();
  }

  /**
   * The path with every side moved in, sideways.
   *
   * @param by mm, outwards if negative
   * @throws IllegalArgumentException if nothing of that shape is left; see {@link #holds}
   */
  public BandPath movedIn(double by) {
    if (!holds(by)) {
      throw new IllegalArgumentException("the path has no room to move in by " + by);
    }
    return new BandPath(shifted(by), closed);
  }

  /** Whether the path, moved in by {@code by} mm, keeps its shape: every side has a length and none touch. */
  public boolean holds(double by) {
    boolean lengths = sides().stream().allMatch(side -> side.length() - side.shrink() * by > 0);
    return lengths && (!closed || corners.size() == 4 || simple(shifted(by)));
  }

  private List<Vec> shifted(double by) {
    List<BandSide> sides = sides();
    List<Vec> moved = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      BandSide out = sides.get(Math.min(i, sides.size() - 1));
      Vec shift = out.inwards();
      if (closed) {
        shift = shift.plus(sides.get((i + sides.size() - 1) % sides.size()).inwards());
      }
      moved.add(corners.get(i).plus(shift.times(by)));
    }
    return moved;
  }

  private static boolean simple(List<Vec> corners) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Vec corner = corners.get(i % corners.size());
      ring[i] = new Coordinate(corner.x(), corner.y());
    }
    return new GeometryFactory().createPolygon(ring).isValid();
  }

  private static InputException refused(String place, String key, Object... values) {
    return new InputException(place, TEXTS.text(key, values), TEXTS.text(key + ".remedy", values));
  }
}
