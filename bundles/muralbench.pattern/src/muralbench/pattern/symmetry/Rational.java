// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

/**
 * An exact fraction in lowest terms.
 *
 * @param over what stands over the line
 * @param under what stands under the line, above 0
 */
public record Rational(long over, long under) implements Comparable<Rational> {
  /** Nothing. */
  public static final Rational ZERO = new Rational(0, 1);
  /** One. */
  public static final Rational ONE = new Rational(1, 1);

  /** Brings the fraction to lowest terms with the sign on top. */
  public Rational {
    if (under == 0) {
      throw new ArithmeticException("a fraction over nothing");
    }
    long common = gcd(Math.abs(over), Math.abs(under)) * (under < 0 ? -1 : 1);
    over /= common;
    under /= common;
  }

  /** {@code over} / {@code under}. */
  public static Rational of(long over, long under) {
    return new Rational(over, under);
  }

  /** A whole number. */
  public static Rational of(long whole) {
    return new Rational(whole, 1);
  }

  /**
   * Reads {@code 3}, {@code -1/2} or {@code 1.25}.
   *
   * @throws NumberFormatException if the text is none of these
   */
  public static Rational parse(String text) {
    int bar = text.indexOf('/');
    if (bar >= 0) {
      long under = Long.parseLong(text.substring(bar + 1));
      if (under == 0) {
        throw new NumberFormatException(text);
      }
      return of(Long.parseLong(text.substring(0, bar)), under);
    }
    int point = text.indexOf('.');
    if (point < 0) {
      return of(Long.parseLong(text));
    }
    int decimals = text.length() - point - 1;
    if (decimals < 1 || decimals > 9) {
      throw new NumberFormatException(text);
    }
    long over = Long.parseLong(text.substring(0, point) + text.substring(point + 1));
    return of(over, Math.round(Math.pow(10, decimals)));
  }

  /** This plus {@code other}. */
  public Rational plus(Rational other) {
    return of(Math.addExact(Math.multiplyExact(over, other.under), Math.multiplyExact(other.over, under)),
        Math.multiplyExact(under, other.under));
  }

  /** This minus {@code other}. */
  public Rational minus(Rational other) {
    return plus(other.times(-1));
  }

  /** This times a whole number. */
  public Rational times(long factor) {
    return of(Math.multiplyExact(over, factor), under);
  }

  /** This times {@code other}. */
  public Rational times(Rational other) {
    return of(Math.multiplyExact(over, other.over), Math.multiplyExact(under, other.under));
  }

  /** What is left when whole numbers are taken off: at least 0, below 1. */
  public Rational part() {
    return of(Math.floorMod(over, under), under);
  }

  /** The largest whole number that is not above this. */
  public long floor() {
    return Math.floorDiv(over, under);
  }

  /** Whether this is a whole number. */
  public boolean whole() {
    return under == 1;
  }

  /** -1, 0 or 1. */
  public int sign() {
    return Long.signum(over);
  }

  /** The nearest double. */
  public double value() {
    return (double) over / under;
  }

  @Override
  public int compareTo(Rational other) {
    return minus(other).sign();
  }

  @Override
  public String toString() {
    return whole() ? Long.toString(over) : over + "/" + under;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? Math.max(a, 1) : gcd(b, a % b);
  }
}
