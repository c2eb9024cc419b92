// SPDX-License-Identifier: EPL-2.0
package muralbench.base.length;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Reading and showing lengths. All arithmetic between text and double is exact decimal arithmetic with one rounding at
 * its end, so that a text always gives the same double and {@link #exact} can be read back to the bit.
 *
 * <p>Never looks at a locale: the decimal mark is a point, digits are 0 to 9.
 */
public final class LengthText {
  /** Longest length that is read, millimetres (1 km); nothing on a wall is farther. */
  public static final double LIMIT = 1e6;

  /** Longest length that is written as it is, millimetres: what is too long has to be shown to be mended. */
  private static final double LONGEST_WRITTEN = 1e9;

  private static final BigDecimal INCH = BigDecimal.valueOf(254, 1);
  private static final BigDecimal SIXTEENTH_INCH = BigDecimal.valueOf(15875, 4);
  private static final BigDecimal HALF_MILLIMETRE = BigDecimal.valueOf(5, 1);
  private static final BigDecimal SIXTY_FOUR = BigDecimal.valueOf(64);
  private static final BigInteger SIXTEEN = BigInteger.valueOf(16);
  private static final BigInteger TWELVE = BigInteger.valueOf(12);
  private static final BigInteger FEET_FROM = BigInteger.valueOf(24);

  /** Digits after which a decimal of inches is certain to be read back to the same double (17 would just do). */
  private static final int ENOUGH_DIGITS = 20;

  /** What is closer to a half step than this counts as the half step: dust of earlier double arithmetic, mm. */
  private static final int DUST_SCALE = 9;

  /** Digits after the point for thousandths of an inch. */
  private static final int FINE_SCALE = 3;

  private LengthText() {}

  /**
   * Reads a length as a person types it: {@code 5 ft 3 1/2 in}, {@code 5' 3-1/2"}, {@code 63.5 in}, {@code 1/8},
   * {@code 1600 mm}, {@code 1.6 m}, {@code 160 cm}; a number without a unit is in {@code unit}, after feet it is in
   * inches. Free of any locale: the decimal mark is a point. Typographic primes, quotes, dashes, blanks and fractions
   * such as {@code ½} are read too; powers of ten such as {@code 1e3} are not. Capitals do not matter, save in the
   * metric symbols: {@code Mm} would be a million metres.
   *
   * @return millimetres, finite, at most {@link #LIMIT} in size; may be negative
   * @throws LengthFormatException if the text is no length
   */
  public static double parse(String text, LengthUnit unit) throws LengthFormatException {
    return LengthParser.parse(text, unit);
  }

  /**
   * The length as text from which {@link #parse} gives back exactly the same double, with its unit; a fraction where
   * the length is a whole number of 64ths of an inch, else a plain decimal of as few digits as will do. A length over
   * {@link #LIMIT} is written too, and not read again.
   *
   * @throws IllegalArgumentException if the length is not finite or larger than 1e9
   */
  public static String exact(double millimetres, LengthUnit unit) {
    if (!(Math.abs(millimetres) <= LONGEST_WRITTEN)) {
      throw new IllegalArgumentException("no length: " + millimetres);
    }
    double size = Math.abs(millimetres);
    String number = unit == LengthUnit.INCH ? exactInches(size) : plain(BigDecimal.valueOf(size));
    // The sign is taken from the bits: minus zero has to come back as minus zero.
    return (Double.doubleToRawLongBits(millimetres) < 0 ? "-" : "") + number + " " + unit.symbol();
  }

  /**
   * The length rounded for reading, to 1/16 in or 0.5 mm, with its unit: {@code 5-7/16 in}, {@code 63-1/2 in},
   * {@code 138.5 mm}, {@code 0 in}.
   *
   * @throws IllegalArgumentException if the length is not finite
   */
  public static String shown(double millimetres, LengthUnit unit) {
    BigInteger steps = steps(millimetres, unit);
    String sign = steps.signum() < 0 ? "-" : "";
    String number = unit == LengthUnit.INCH
        ? mixed(steps.abs(), SIXTEEN)
        : plain(new BigDecimal(steps.abs()).multiply(HALF_MILLIMETRE));
    return sign + number + " " + unit.symbol();
  }

  /**
   * As {@link #shown}, with feet for a length of 24 in and more: {@code 5 ft 3-1/2 in}, {@code 5 ft 0 in}; metric as
   * {@code shown}.
   *
   * @throws IllegalArgumentException if the length is not finite
   */
  public static String shownInFeet(double millimetres, LengthUnit unit) {
    BigInteger steps = steps(millimetres, unit);
    if (unit != LengthUnit.INCH || steps.abs().compareTo(FEET_FROM.multiply(SIXTEEN)) < 0) {
      return shown(millimetres, unit);
    }
    BigInteger[] feetAndRest = steps.abs().divideAndRemainder(TWELVE.multiply(SIXTEEN));
    return (steps.signum() < 0 ? "-" : "") + feetAndRest[0] + " ft " + mixed(feetAndRest[1], SIXTEEN) + " in";
  }

  /**
   * The length for work that 1/16 in is too coarse for, such as a joint: exact where it is a whole number of 64ths of
   * an inch, else rounded to 0.001 in, or to 0.01 mm, half away from zero; with its unit: {@code 9/64 in},
   * {@code 0.143 in}, {@code 3.63 mm}.
   *
   * @throws IllegalArgumentException if the length is not finite
   */
  public static String fine(double millimetres, LengthUnit unit) {
    if (!Double.isFinite(millimetres)) {
      throw new IllegalArgumentException("no length: " + millimetres);
    }
    BigDecimal size = BigDecimal.valueOf(Math.abs(millimetres)).setScale(DUST_SCALE, RoundingMode.HALF_UP);
    String sign = millimetres < 0 && size.signum() > 0 ? "-" : "";
    if (unit != LengthUnit.INCH) {
      return sign + plain(size.setScale(2, RoundingMode.HALF_UP)) + " " + unit.symbol();
    }
    BigDecimal[] parts = size.multiply(SIXTY_FOUR).divideAndRemainder(INCH);
    String number = parts[1].signum() == 0 ? mixed(parts[0].toBigInteger(), SIXTY_FOUR.toBigInteger())
        : plain(size.divide(INCH, FINE_SCALE, RoundingMode.HALF_UP));
    return sign + number + " " + unit.symbol();
  }

  /**
   * The length rounded to the step of {@link #shown}: 1/16 in or 0.5 mm, half away from zero; millimetres.
   *
   * @throws IllegalArgumentException if the length is not finite
   */
  public static double rounded(double millimetres, LengthUnit unit) {
    return new BigDecimal(steps(millimetres, unit)).multiply(step(unit)).doubleValue();
  }

  private static BigInteger steps(double millimetres, LengthUnit unit) {
    if (!Double.isFinite(millimetres)) {
      throw new IllegalArgumentException("no length: " + millimetres);
    }
    return BigDecimal.valueOf(millimetres).setScale(DUST_SCALE, RoundingMode.HALF_UP)
        .divide(step(unit), 0, RoundingMode.HALF_UP).toBigInteger();
  }

  private static BigDecimal step(LengthUnit unit) {
    return unit == LengthUnit.INCH ? SIXTEENTH_INCH : HALF_MILLIMETRE;
  }

  private static String exactInches(double millimetres) {
    BigInteger parts = BigInteger.valueOf(Math.round(millimetres / LengthUnit.INCH.millimetres() * 64));
    BigInteger sixtyFour = BigInteger.valueOf(64);
    if (LengthParser.millimetres(new BigDecimal(parts), new BigDecimal(sixtyFour), INCH) == millimetres) {
      return mixed(parts, sixtyFour);
    }
    BigDecimal inches = new BigDecimal(millimetres).divide(INCH, new MathContext(2 * ENOUGH_DIGITS));
    for (int digits = 1;; digits++) {
      BigDecimal candidate = inches.round(new MathContext(digits));
      if (digits == ENOUGH_DIGITS || candidate.multiply(INCH).doubleValue() == millimetres) {
        return plain(candidate);
      }
    }
  }

  /** Whole number and reduced fraction of {@code parts} of {@code denominator}, both not negative. */
  private static String mixed(BigInteger parts, BigInteger denominator) {
    BigInteger[] wholeAndRest = parts.divideAndRemainder(denominator);
    BigInteger rest = wholeAndRest[1];
    if (rest.signum() == 0) {
      return wholeAndRest[0].toString();
    }
    BigInteger common = rest.gcd(denominator);
    String fraction = rest.divide(common) + "/" + denominator.divide(common);
    return wholeAndRest[0].signum() == 0 ? fraction : wholeAndRest[0] + "-" + fraction;
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
