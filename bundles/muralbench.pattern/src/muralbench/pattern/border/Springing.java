// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import muralbench.setout.geometry.Vec;

/**
 * Where the leg of an arch meets its arc, on the left, seen from the centre of the circle with the crown above. The
 * joint there runs along the line from the meeting of the outer edges to the meeting of the inner edges: level for a
 * semicircle, aslant like a mitre for a flatter arc.
 *
 * @param outerRadius outer radius of the row, mm
 * @param width of the row, mm
 * @param outer where the outer edges meet
 * @param inner where the inner edges meet
 */
record Springing(double outerRadius, double width, Vec outer, Vec inner) {
  /**
   * The springing of a row that lies {@code move} mm inside the curve; coordinates are NaN where the edges do not
   * meet.
   */
  static Springing of(Curve curve, double width, double move) {
    double radius = curve.radius() - move;
    double half = curve.halfWidth() - move;
    return new Springing(radius, width, new Vec(-half, rise(radius, half)),
        new Vec(width - half, rise(radius - width, half - width)));
  }

  private static double rise(double radius, double half) {
    return half == radius ? 0 : Math.sqrt(radius * radius - half * half);
  }

  private Vec along() {
    return inner.minus(outer).times(1 / inner.distance(outer));
  }

  /** Half a joint along the upright edges of the leg, mm. */
  double halfJoint(double joint) {
    return joint / 2 * inner.distance(outer) / width;
  }

  /** By how much the leg is shorter at its inner edge, mm. */
  double slope() {
    return outer.y() - inner.y();
  }

  /** The end of the first piece of the arc at its outer edge, half a joint from the line. */
  Vec arcOuter(double joint) {
    return crossing(joint, outerRadius, 0);
  }

  /** The end of the first piece of the arc at its inner edge. */
  Vec arcInner(double joint) {
    return crossing(joint, outerRadius - width, inner.distance(outer));
  }

  /**
   * Where the line, half a joint towards the arc, crosses a circle; of two places the one near a way along the line.
   */
  private Vec crossing(double joint, double radius, double near) {
    Vec along = along();
    Vec start = outer.plus(new Vec(-along.y(), along.x()).times(joint / 2));
    double middle = -start.dot(along);
    double reach = Math.sqrt(radius * radius - start.cross(along) * start.cross(along));
    double way = Math.abs(middle - reach - near) <= Math.abs(middle + reach - near) ? middle - reach : middle + reach;
    return start.plus(along.times(way));
  }

  /** The angle of a point from the crown to the left, radians. */
  static double angle(Vec point) {
    return Math.atan2(-point.x(), point.y());
  }
}
