// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.math.BigInteger;

/** An exact fraction, for checks that are not to share the solver's arithmetic. */
record Fraction(BigInteger above, BigInteger below) implements Comparable<Fraction> {
  static Fraction of(long whole) {
    return of(whole, 1);
  }

  static Fraction of(long above, long below) {
    return of(BigInteger.valueOf(above), BigInteger.valueOf(below));
  }

  private static Fraction of(BigInteger above, BigInteger below) {
    BigInteger common = above.gcd(below).max(BigInteger.ONE);
    BigInteger sign = BigInteger.valueOf(below.signum());
    return new Fraction(above.divide(common).multiply(sign), below.divide(common).multiply(sign));
  }

  Fraction plus(Fraction other) {
    return of(above.multiply(other.below).add(other.above.multiply(below)), below.multiply(other.below));
  }

  Fraction minus(Fraction other) {
    return plus(other.times(of(-1)));
  }

  Fraction times(Fraction other) {
    return of(above.multiply(other.above), below.multiply(other.below));
  }

  Fraction over(Fraction other) {
    return of(above.multiply(other.below), below.multiply(other.above));
  }

  boolean within(Fraction low, Fraction high) {
    return compareTo(low) >= 0 && compareTo(high) <= 0;
  }

  boolean zero() {
    return above.signum() == 0;
  }

  double value() {
    return above.doubleValue() / below.doubleValue();
  }

  @Override
  public int compareTo(Fraction other) {
    return above.multiply(other.below).compareTo(other.above.multiply(below));
  }
}
