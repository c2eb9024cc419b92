// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.setout.geometry.Box;

/** Bands for tests; lengths in inches. */
final class Bands {
  static final double INCH = 25.4;

  private Bands() {}

  static BandPath panel(double width, double height) {
    return BandPath.rectangle(new Box(0, 0, width * INCH, height * INCH));
  }

  /** A square tile with a corner tile of its own size. */
  static Border square(double width, double height, double tile, JointRange joint, Permits permits) {
    return Border.of(panel(width, height), BandRow.of(tile * INCH, tile * INCH, 1), Corner.TILE, joint, permits);
  }

  static JointRange joints(double min, double preferred, double max) {
    return new JointRange(min * INCH, preferred * INCH, max * INCH);
  }

  static Closing solve(Border border) {
    try {
      return ClosingSolver.solve(border, LengthUnit.INCH);
    } catch (InputException refused) {
      throw new AssertionError(refused);
    }
  }

  static BandLayout best(Border border) {
    return solve(border).best().orElseThrow();
  }
}
