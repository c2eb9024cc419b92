// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import muralbench.setout.geometry.Vec;

/**
 * The outer edge of a band on a curve: a circle, an arc of one, or an arch, which is an arc on two upright legs.
 * Pieces are counted clockwise: on a circle from the piece at the top, on an arc from its left end as seen from its
 * centre, on an arch from the foot of the left leg.
 *
 * @param centre middle of the circle, mm in the wall plane
 * @param radius outer radius, mm
 * @param middle direction from the centre to the middle of the arc, radians counter-clockwise from x; a half pi is up
 * @param halfAngle angle from there to either end, radians, above 0; pi for a circle
 * @param leg height of the legs at their outer edge, mm; 0 for none, and then an arc ends in the middle of a joint
 */
public record Curve(Vec centre, double radius, double middle, double halfAngle, double leg) {
  /** A circle. */
  public static Curve circle(Vec centre, double radius) {
    return new Curve(centre, radius, Math.PI / 2, Math.PI, 0);
  }

  /**
   * An arc.
   *
   * @param middle direction of its middle, degrees counter-clockwise from x
   * @param sweep its whole angle, degrees, above 0 and below 360
   */
  public static Curve arc(Vec centre, double radius, double middle, double sweep) {
    return new Curve(centre, radius, Math.toRadians(middle), Math.toRadians(sweep) / 2, 0);
  }

  /**
   * An arch with a semicircle.
   *
   * @param foot the outer foot of the left leg, mm
   * @param width from outer edge to outer edge, mm
   * @param leg height of the springing line over the foot, mm
   */
  public static Curve arch(Vec foot, double width, double leg) {
    return segmentalArch(foot, width, leg, width / 2);
  }

  /**
   * An arch with less than a semicircle, or all of one.
   *
   * @param rise height of the crown over the springing line, mm, above 0 and at most half the width
   */
  public static Curve segmentalArch(Vec foot, double width, double leg, double rise) {
    double half = width / 2;
    double radius = (half * half + rise * rise) / (2 * rise);
    double angle = rise == half ? Math.PI / 2 : Math.asin(half / radius);
    return new Curve(new Vec(foot.x() + half, foot.y() + leg + rise - radius), radius, Math.PI / 2, angle, leg);
  }

  /** Whether the curve is a whole circle. */
  public boolean full() {
    return halfAngle == Math.PI;
  }

  /** Whether it stands on legs. */
  public boolean legs() {
    return leg > 0;
  }

  /** Height of the feet of the legs, mm in the wall plane. */
  public double footHeight() {
    return centre.y() + radius * cos() - leg;
  }

  /** Half the width between the outer edges of the legs, mm. */
  public double halfWidth() {
    return halfAngle == Math.PI / 2 ? radius : radius * Math.sin(halfAngle);
  }

  private double cos() {
    return halfAngle == Math.PI / 2 ? 0 : Math.cos(halfAngle);
  }
}
