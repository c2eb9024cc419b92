// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

/**
 * An elliptical arc given by its end points, as path data has it, turned into one given by its centre. After the
 * implementation notes of SVG 1.1, F.6.5 (centre) and F.6.6 (radii out of range); y is up, so that a growing angle runs
 * counter-clockwise.
 *
 * @param rx first radius as written; its sign is dropped
 * @param ry second radius as written; its sign is dropped
 * @param degrees direction of the first axis
 * @param large whether the arc is the longer way round
 * @param positive whether the arc runs in the direction of growing angle
 */
record EndpointArc(double rx, double ry, double degrees, boolean large, boolean positive) {
  /** So many units in the last place of the coordinates may be lost before the arc is computed. */
  private static final int ROUNDINGS = 8;

  /** The arc between two different points, or a line if a radius is 0. */
  Segment between(Vec start, Vec end) {
    double a = Math.abs(rx);
    double b = Math.abs(ry);
    if (a == 0 || b == 0) {
      return new Line(start, end);
    }
    double tilt = a == b ? 0 : Math.toRadians(degrees % 360);
    double cos = Math.cos(tilt);
    double sin = Math.sin(tilt);
    Vec half = start.minus(end).times(0.5);
    // The half chord on the unit circle that the ellipse is an image of.
    Vec unit = new Vec((cos * half.x() + sin * half.y()) / a, (cos * half.y() - sin * half.x()) / b);
    double reach = unit.dot(unit);
    double grow = reach > 1 ? Math.sqrt(reach) : 1;
    unit = unit.times(1 / grow);
    a *= grow;
    b *= grow;
    double gap = 1 / Math.min(reach, 1) - 1;
    double aside = gap < noise(start, end) ? 0 : Math.sqrt(gap) * (large == positive ? -1 : 1);
    Vec middle = new Vec(unit.y() * aside, -unit.x() * aside);
    Vec offset = new Vec(cos * a * middle.x() - sin * b * middle.y(), sin * a * middle.x() + cos * b * middle.y());
    double from = angle(unit.minus(middle));
    double sweep = angle(unit.times(-1).minus(middle)) - from;
    return new Arc(start.towards(end, 0.5).plus(offset), a, b, tilt, from, directed(sweep));
  }

  /**
   * What rounding of the end points makes of the distance between chord and centre, in parts of the half chord squared.
   * Below it the chord is a diameter; without this the square root would move the centre by far more than the rounding.
   */
  private static double noise(Vec start, Vec end) {
    double far = Math.max(start.length(), end.length());
    return ROUNDINGS * Math.ulp(far) / (start.distance(end) / 2);
  }

  private static double angle(Vec direction) {
    return Math.atan2(direction.y(), direction.x());
  }

  private double directed(double sweep) {
    if (positive && sweep <= 0) {
      return sweep + 2 * Math.PI;
    }
    return !positive && sweep >= 0 ? sweep - 2 * Math.PI : sweep;
  }
}
