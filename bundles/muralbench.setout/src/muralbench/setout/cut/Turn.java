// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/** Turns about (0, 0), exact where they are quarter turns but for rounding. */
final class Turn {
  private static final double ROUNDING = 1e-9;

  private Turn() {}

  static Motion by(double radians) {
    double degrees = Math.toDegrees(radians);
    double quarters = Math.rint(degrees / 90) * 90;
    return Motion.turn(Math.abs(degrees - quarters) < ROUNDING ? quarters : degrees, Vec.ZERO);
  }
}
