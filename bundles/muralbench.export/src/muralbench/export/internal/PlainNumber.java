// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers for machines: the shortest decimal text from which the same double is read back, without an exponent, since
 * some readers of coordinates and of spreadsheets stumble over one.
 */
public final class PlainNumber {
  private PlainNumber() {}

  /**
   * The text of a number; zero has no sign.
   *
   * @throws NumberFormatException if it is not finite: nothing that is set out may be
   */
  public static String text(double number) {
    BigDecimal exact = new BigDecimal(NumberOutput.toString(number, true));
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }

  /** The text of a number rounded to some decimals, half away from zero. */
  public static String rounded(double number, int decimals) {
    BigDecimal rounded = new BigDecimal(number).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
