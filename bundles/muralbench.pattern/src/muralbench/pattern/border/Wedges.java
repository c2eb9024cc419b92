// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/**
 * Equal wedges with parallel-sided joints, as in a ring: a wedge takes an angle m with its joint, and at the radius r
 * spans the half angle m / 2 - asin(j / 2r), so that each joint keeps its width j from the inner to the outer edge.
 * On a circle m is 2 pi / N.
 *
 * @param outer outer radius, mm
 * @param inner inner radius, mm
 * @param angle m, radians
 * @param joint j, mm
 */
record Wedges(double outer, double inner, double angle, double joint) {
  /** The wedges of a curve for a joint, a move and a number of pieces. */
  static Wedges of(CurveBorder border, double joint, double move, int count) {
    Curve curve = border.curve();
    double outer = curve.radius() - move;
    double whole = 2 * curve.halfAngle();
    if (curve.legs()) {
      Springing springing = Springing.of(curve, border.row().width(), move);
      whole = 2 * (Springing.angle(springing.arcOuter(joint)) + Math.asin(joint / (2 * outer)));
    }
    return new Wedges(outer, outer - border.row().width(), whole / count, joint);
  }

  /** Half of what a wedge spans at a radius, radians. */
  double halfAngle(double radius) {
    return angle / 2 - Math.asin(joint / (2 * radius));
  }

  /** Whether the joints leave room for the wedges at the inner edge. */
  boolean possible() {
    return inner > 0 && joint < 2 * inner && halfAngle(inner) > 0 && halfAngle(outer) < Math.PI / 2;
  }

  /** Length of a wedge along the middle of the row, mm. */
  double length() {
    double middle = (outer + inner) / 2;
    return 2 * middle * halfAngle(middle);
  }

  double outerChord() {
    return 2 * outer * Math.sin(halfAngle(outer));
  }

  double innerChord() {
    return 2 * inner * Math.sin(halfAngle(inner));
  }

  /** Height of the rectangle a wedge is cut from, mm; its width is the outer chord. */
  double blankHeight() {
    return outer - inner * Math.cos(halfAngle(inner));
  }
}
