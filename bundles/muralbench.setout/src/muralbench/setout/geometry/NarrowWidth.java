// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The true narrow width of a shape. Of a convex one it is the least width between two parallels that hold it, as callipers
 * measure it: a clipped corner or a tapering end does not make a piece narrow. Where corners point inwards or there are
 * holes, it is the least distance between two sides that face each other across the inside, be it the leg beside a notch,
 * the web beside a hole or the body itself, and the least width at the most. Sides face each other if their outward
 * directions differ by 135 degrees or more. A pointed tip is not a width: sides that run together in it, be
 * they straight or curved, are measured where they end. Curves are taken as chords.
 */
public final class NarrowWidth {
  /** How far chords may be from curves here, mm. */
  private static final double CHORD_ERROR = 0.05;
  private static final double FACING = -Math.sqrt(0.5);
  /** Distances that differ by less are equal, mm. */
  private static final double SAME = 1e-6;
  private static final double NUDGE = 1e-5;
  /** A corner points inwards if the sine of its bend is below minus this. */
  private static final double REFLEX = 1e-6;

  private final double[] x;
  private final double[] y;
  private final int[] next;
  private final int[] before;
  private final double[] normalX;
  private final double[] normalY;
  private final double[] length;

  private NarrowWidth(List<double[]> rings) {
    int corners = rings.stream().mapToInt(ring -> ring.length / 2).sum();
    x = new double[corners];
    y = new double[corners];
    next = new int[corners];
    before = new int[corners];
    normalX = new double[corners];
    normalY = new double[corners];
    length = new double[corners];
    int at = 0;
    for (double[] ring : rings) {
      at = add(ring, at);
    }
  }

  private int add(double[] ring, int first) {
    int corners = ring.length / 2;
    for (int i = 0; i < corners; i++) {
      int at = first + i;
      x[at] = ring[2 * i];
      y[at] = ring[2 * i + 1];
      next[at] = first + (i + 1) % corners;
      before[at] = first + (i + corners - 1) % corners;
    }
    for (int i = first; i < first + corners; i++) {
      double dx = x[next[i]] - x[i];
      double dy = y[next[i]] - y[i];
      length[i] = Math.hypot(dx, dy);
      normalX[i] = dy / length[i];
      normalY[i] = -dx / length[i];
    }
    return first + corners;
  }

  /**
   * The narrow width of a shape, mm.
   *
   * @param outline its edge, counter-clockwise
   * @param holes its holes, clockwise
   */
  public static double of(Contour outline, List<Contour> holes) {
    List<double[]> rings = new ArrayList<>();
    rings.add(ring(outline));
    holes.forEach(hole -> rings.add(ring(hole)));
    return of(rings, 0);
  }

  /**
   * The narrow width of a polygon, mm.
   *
   * @param rings x and y of the corners by turns, no corner twice in succession: the edge counter-clockwise, then the holes
   *     clockwise
   * @param shortest shorter sides are not asked what they face, mm
   */
  public static double of(List<double[]> rings, double shortest) {
    return new NarrowWidth(rings).least(shortest);
  }

  private static double[] ring(Contour contour) {
    List<Vec> points = contour.points(CHORD_ERROR);
    double[] ring = new double[2 * points.size()];
    int size = 0;
    Vec last = points.get(points.size() - 1);
    for (Vec point : points) {
      if (point.x() != last.x() || point.y() != last.y()) {
        ring[size++] = point.x();
        ring[size++] = point.y();
      }
      last = point;
    }
    return Arrays.copyOf(ring, size);
  }

  private double least(double shortest) {
    double least = caliper();
    if (convex()) {
      return least;
    }
    for (int i = 0; i < x.length; i++) {
      for (int k = i + 1; k < x.length; k++) {
        if (length[i] >= shortest && length[k] >= shortest && facing(i, k)) {
          least = Math.min(least, across(i, k, least));
        }
      }
    }
    return least;
  }

  /** Whether no corner points inwards; a hole has such corners only. */
  private boolean convex() {
    for (int i = 0; i < x.length; i++) {
      if (normalX[before[i]] * normalY[i] - normalY[before[i]] * normalX[i] < -REFLEX) {
        return false;
      }
    }
    return true;
  }

  private boolean facing(int i, int k) {
    return normalX[i] * normalX[k] + normalY[i] * normalY[k] <= FACING;
  }

  /** The distance between two sides, if it is below a limit and lies inside the shape; else the limit. */
  private double across(int i, int k, double limit) {
    if (next[i] == k || next[k] == i) {
      return atEnds(i, k, limit);
    }
    double gap = gap(i, k);
    double least = limit;
    if (gap < limit) {
      int[] corners = {i, next[i], k, next[k]};
      for (int c = 0; c < 4; c++) {
        int side = c < 2 ? k : i;
        int own = c < 2 ? i : k;
        if (distance(corners[c], side) <= gap + SAME && inward(corners[c], own, side) && !tip(corners[c], own, side, gap)) {
          least = gap;
        }
      }
    }
    return least;
  }

  /** Two sides that meet in a tip, measured where they end. */
  private double atEnds(int i, int k, double limit) {
    int first = next[i] == k ? i : k;
    int second = next[first];
    double least = limit;
    for (int c = 0; c < 2; c++) {
      int corner = c == 0 ? first : next[second];
      int own = c == 0 ? first : second;
      int side = c == 0 ? second : first;
      int beyond = c == 0 ? before[first] : next[second];
      double distance = distance(corner, side);
      if (distance > SAME && distance < least && !facing(beyond, side) && inward(corner, own, side)) {
        least = distance;
      }
    }
    return least;
  }

  /** Whether the side next to a corner comes still nearer to what the corner faces: it then counts instead. */
  private boolean tip(int corner, int own, int side, double gap) {
    int other = corner == own ? before[own] : next[own];
    if (other != side && facing(other, side) && gap(other, side) < gap - SAME) {
      return true;
    }
    if (other == side) {
      return false;
    }
    // The nearest point may itself be a corner of the other side, with a neighbour that comes nearer.
    for (int end : new int[] {side, next[side]}) {
      if (Math.abs(Math.hypot(x[end] - x[corner], y[end] - y[corner]) - gap) <= SAME) {
        int beyond = end == side ? before[side] : next[side];
        if (beyond != own && facing(beyond, own) && gap(beyond, own) < gap - SAME) {
          return true;
        }
      }
    }
    return false;
  }

  private double gap(int i, int k) {
    if (next[i] == k || next[k] == i) {
      return 0;
    }
    return Math.min(Math.min(distance(i, k), distance(next[i], k)), Math.min(distance(k, i), distance(next[k], i)));
  }

  private double share(int corner, int side) {
    double dx = x[next[side]] - x[side];
    double dy = y[next[side]] - y[side];
    double t = ((x[corner] - x[side]) * dx + (y[corner] - y[side]) * dy) / (length[side] * length[side]);
    return Math.max(0, Math.min(1, t));
  }

  private double distance(int corner, int side) {
    double t = share(corner, side);
    return Math.hypot(x[side] + t * (x[next[side]] - x[side]) - x[corner],
        y[side] + t * (y[next[side]] - y[side]) - y[corner]);
  }

  /** Whether the way from a corner of a side to the nearest point of another leads through the inside of the shape. */
  private boolean inward(int corner, int own, int side) {
    double t = share(corner, side);
    double wayX = x[side] + t * (x[next[side]] - x[side]) - x[corner];
    double wayY = y[side] + t * (y[next[side]] - y[side]) - y[corner];
    return wayX * normalX[own] + wayY * normalY[own] < 0 && wayX * normalX[side] + wayY * normalY[side] > 0
        && inside(nudged(x[corner] + wayX / 2, x, own, side), nudged(y[corner] + wayY / 2, y, own, side));
  }

  /** A place moved a very little towards the middles of two sides: the way may run along an edge between them. */
  private double nudged(double at, double[] corners, int own, int side) {
    double middle = (corners[own] + corners[next[own]] + corners[side] + corners[next[side]]) / 4;
    return at + NUDGE * (middle - at);
  }

  private boolean inside(double pointX, double pointY) {
    boolean inside = false;
    for (int i = 0; i < x.length; i++) {
      int k = next[i];
      if (y[i] > pointY != y[k] > pointY && pointX < x[i] + (x[k] - x[i]) * (pointY - y[i]) / (y[k] - y[i])) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** The least width between parallels along one of the sides. */
  private double caliper() {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < x.length; k++) {
        double along = x[k] * normalX[i] + y[k] * normalY[i];
        low = Math.min(low, along);
        high = Math.max(high, along);
      }
      least = Math.min(least, high - low);
    }
    return least;
  }
}
