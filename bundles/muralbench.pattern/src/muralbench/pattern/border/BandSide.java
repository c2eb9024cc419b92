// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import muralbench.setout.geometry.Vec;

/**
 * One straight side of a {@link BandPath}, walked clockwise. A place beside it is given by the way along the side
 * from its start and the depth inwards from the outer edge.
 *
 * @param from where the side starts
 * @param to where it ends
 * @param start what the outline does at the start
 * @param end what it does at the end
 */
public record BandSide(Vec from, Vec to, BandEnd start, BandEnd end) {
  /** What deviates from level or upright by up to this counts as level or upright, mm. */
  static final double UPRIGHT = 1e-6;

  /** Length of the outer edge, mm. */
  public double length() {
    return from.distance(to);
  }

  /** Direction of travel, of length 1. */
  public Vec along() {
    return to.minus(from).times(1 / length());
  }

  /** Direction from the outer edge into the band, of length 1: to the right of the direction of travel. */
  public Vec inwards() {
    Vec along = along();
    return new Vec(along.y(), -along.x());
  }

  /**
   * A point in the wall plane.
   *
   * @param way along the side from its start, mm; may lie beyond either end
   * @param depth inwards from the outer edge, mm
   */
  public Vec at(double way, double depth) {
    return from.plus(along().times(way)).plus(inwards().times(depth));
  }

  /**
   * By how many quarter turns, counter-clockwise, a tile drawn for the top side is turned on this side: 0 on a top
   * side, 1 on a left, 2 on a bottom, 3 on a right one.
   */
  public int quarters() {
    Vec along = along();
    if (Math.abs(along.x()) >= Math.abs(along.y())) {
      return along.x() > 0 ? 0 : 2;
    }
    return along.y() > 0 ? 1 : 3;
  }

  /** Whether it is level or upright, to a millionth of a millimetre. */
  boolean straight() {
    Vec way = to.minus(from);
    return Math.min(Math.abs(way.x()), Math.abs(way.y())) <= UPRIGHT;
  }

  /** By how many mm the side gets shorter for each mm its outline moves in: 2, 0 or -2 for right angles. */
  int shrink() {
    return shrink(start) + shrink(end);
  }

  private static int shrink(BandEnd end) {
    return switch (end) {
      case CONVEX -> 1;
      case REFLEX -> -1;
      case FREE -> 0;
    };
  }
}
