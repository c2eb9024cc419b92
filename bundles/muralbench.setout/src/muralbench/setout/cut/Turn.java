// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.Comparator;
import java.util.List;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/** Turns in degrees counter-clockwise, rounded to a millionth, so that quarter turns are exact. */
final class Turn {
  private static final double ROUNDING = 1e6;
  /** Of a turn to the left and one as far to the right the one to the left is taken. */
  private static final double LEFT_FIRST = 10 / ROUNDING;

  private Turn() {}

  /** The movement that turns about (0, 0). */
  static Motion by(double degrees) {
    return Motion.turn(round(degrees), Vec.ZERO);
  }

  /** The same turn from 0 to below 360. */
  static double full(double degrees) {
    return reduced(degrees, 360);
  }

  /** How far {@code degrees} turns, the shorter way round. */
  private static double far(double degrees) {
    double full = full(degrees);
    return full > 180 ? 360 - full : full - LEFT_FIRST;
  }

  /** Puts turns first that, followed by {@code after}, turn less. */
  static Comparator<Double> leastFirst(double after) {
    return Comparator.comparingDouble(turn -> far(turn + after));
  }

  /** The least turn, from above -45 to 45, that makes one of the directions level or plumb; 0 if there are none. */
  static double level(List<Vec> directions) {
    return directions.stream().map(direction -> reduced(-degrees(direction), 90))
        .map(turn -> turn > 45 ? turn - 90 : turn).min(leastFirst(0)).orElse(0.0);
  }

  /** The direction of a vector, counter-clockwise from the right. */
  static double degrees(Vec direction) {
    return Math.toDegrees(Math.atan2(direction.y(), direction.x()));
  }

  private static double reduced(double degrees, double circle) {
    double rounded = round(degrees);
    return round(rounded - circle * Math.floor(rounded / circle)) % circle;
  }

  private static double round(double degrees) {
    return Math.rint(degrees * ROUNDING) / ROUNDING + 0.0;
  }
}
