// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import muralbench.pattern.symmetry.Rational;

/**
 * An area in square units, exact: a fraction plus a fraction of pi.
 *
 * @param straight the part without pi
 * @param round how many times pi
 */
public record ExactArea(Rational straight, Rational round) {
  /** No area. */
  public static final ExactArea NONE = new ExactArea(Rational.ZERO, Rational.ZERO);

  /** An area without pi. */
  public static ExactArea of(Rational straight) {
    return new ExactArea(straight, Rational.ZERO);
  }

  /** Both together. */
  public ExactArea plus(ExactArea other) {
    return new ExactArea(straight.plus(other.straight), round.plus(other.round));
  }

  /** The area divided by a whole number, above 0. */
  public ExactArea over(long whole) {
    Rational share = Rational.of(1, whole);
    return new ExactArea(straight.times(share), round.times(share));
  }

  /** The nearest double. */
  public double value() {
    return straight.value() + Math.PI * round.value();
  }

  @Override
  public String toString() {
    return round.sign() == 0 ? straight.toString() : straight + " + " + round + " pi";
  }
}
