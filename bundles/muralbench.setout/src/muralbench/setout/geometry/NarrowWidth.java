// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The true narrow width of a shape: the least distance between two sides that face each other across its inside, be it the
 * leg beside a notch, the web beside a hole or the body itself. Sides face each other if their outward directions differ by
 * 135 degrees or more, so a clipped corner does not count as narrow; where no two sides do, as in many triangles, it is the
 * least width between two parallels that hold the shape. Curves are taken as chords.
 */
public final class NarrowWidth {
  /** How far chords may be from curves here, mm. */
  private static final double CHORD_ERROR = 0.05;
  private static final double FACING = -Math.sqrt(0.5);

  private final List<Vec> starts = new ArrayList<>();
  private final List<Vec> ends = new ArrayList<>();
  private final List<Vec> normals = new ArrayList<>();

  private NarrowWidth(Contour outline, List<Contour> holes) {
    add(outline);
    holes.forEach(this::add);
  }

  /**
   * The narrow width of a shape, mm.
   *
   * @param outline its edge, counter-clockwise
   * @param holes its holes, clockwise
   */
  public static double of(Contour outline, List<Contour> holes) {
    return new NarrowWidth(outline, holes).least();
  }

  private void add(Contour contour) {
    List<Vec> corners = contour.points(CHORD_ERROR);
    for (int i = 0; i < corners.size(); i++) {
      Vec start = corners.get(i);
      Vec end = corners.get((i + 1) % corners.size());
      Vec side = end.minus(start);
      double length = side.length();
      if (length > 0) {
        starts.add(start);
        ends.add(end);
        normals.add(new Vec(side.y() / length, -side.x() / length));
      }
    }
  }

  private double least() {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < starts.size(); i++) {
      for (int k = i + 1; k < starts.size(); k++) {
        if (normals.get(i).dot(normals.get(k)) <= FACING) {
          least = Math.min(least, across(i, k, least));
        }
      }
    }
    return Math.min(least, caliper());
  }

  /** The distance between two sides, if it is below a limit and lies inside the shape; else the limit. */
  private double across(int i, int k, double limit) {
    double least = limit;
    for (Vec[] pair : new Vec[][] {{starts.get(i), nearest(starts.get(i), k)}, {ends.get(i), nearest(ends.get(i), k)},
        {nearest(starts.get(k), i), starts.get(k)}, {nearest(ends.get(k), i), ends.get(k)}}) {
      double distance = pair[0].distance(pair[1]);
      if (distance > 0 && distance < least && leavesInwards(i, pair[0], pair[1])
          && leavesInwards(k, pair[1], pair[0]) && inside(pair[0].towards(pair[1], 0.5))) {
        least = distance;
      }
    }
    return least;
  }

  private Vec nearest(Vec point, int side) {
    Vec along = ends.get(side).minus(starts.get(side));
    double t = point.minus(starts.get(side)).dot(along) / along.dot(along);
    return starts.get(side).towards(ends.get(side), Math.max(0, Math.min(1, t)));
  }

  private boolean leavesInwards(int side, Vec from, Vec to) {
    return to.minus(from).dot(normals.get(side)) < 0;
  }

  private boolean inside(Vec point) {
    boolean inside = false;
    for (int i = 0; i < starts.size(); i++) {
      Vec a = starts.get(i);
      Vec b = ends.get(i);
      if (a.y() > point.y() != b.y() > point.y()
          && point.x() < a.x() + (b.x() - a.x()) * (point.y() - a.y()) / (b.y() - a.y())) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** The least width between parallels along one of the sides. */
  private double caliper() {
    double least = Double.POSITIVE_INFINITY;
    for (Vec normal : normals) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (Vec corner : starts) {
        double along = corner.dot(normal);
        low = Math.min(low, along);
        high = Math.max(high, along);
      }
      least = Math.min(least, high - low);
    }
    return least;
  }
}
