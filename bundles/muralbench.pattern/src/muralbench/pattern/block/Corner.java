// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import muralbench.pattern.symmetry.Rational;
import muralbench.setout.geometry.Vec;

/**
 * A corner of a piece, exact, in units from the lower left corner of the block.
 *
 * @param x units to the right
 * @param y units up
 */
record Corner(Rational x, Rational y) {
  static Corner of(long x, long y) {
    return new Corner(Rational.of(x), Rational.of(y));
  }

  Corner plus(Rational right, Rational up) {
    return new Corner(x.plus(right), y.plus(up));
  }

  /** Reads {@code x,y} with whole numbers, fractions or decimals. */
  static Corner parse(String text) {
    String[] parts = text.split(",", -1);
    if (parts.length != 2) {
      throw new NumberFormatException(text);
    }
    return new Corner(Rational.parse(parts[0]), Rational.parse(parts[1]));
  }

  Vec point() {
    return new Vec(x.value(), y.value());
  }
}
