// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.math.BigDecimal;
import java.util.Map;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;

/**
 * Words the findings of one rule. Texts have the code as their key; {@code .remedy} and {@code .source} follow it.
 *
 * @param code code of the rule
 * @param units units of the lengths in the texts
 */
record Report(String code, LengthUnit units) {
  /** Differences below this are rounding, mm. */
  static final double ROUNDING = 1e-6;

  private static final Messages MESSAGES = Messages.of(Report.class);
  /** 1/64 in, mm; decimal, so that 12 of them are 3/16 in to the last digit. */
  private static final BigDecimal FINE_INCH = BigDecimal.valueOf(396875, 6);
  private static final BigDecimal FINE_METRIC = BigDecimal.valueOf(1, 1);

  /**
   * A finding.
   *
   * @param variant which message; empty for the one under the code itself, else a suffix with its dot
   * @param texts names and values of the placeholders of message and remedy
   */
  Finding finding(Grade grade, String place, String variant, Map<String, Object> values, Object... texts) {
    return new Finding(code, grade, place, MESSAGES.text(code + variant, texts),
        MESSAGES.text(code + ".remedy", texts), MESSAGES.text(code + ".source"), values);
  }

  /** A further text of the rule: the one under the code and a suffix with its dot. */
  String text(String suffix, Object... texts) {
    return MESSAGES.text(code + suffix, texts);
  }

  /** A length rounded for reading. */
  String shown(double length) {
    return LengthText.shown(length, units);
  }

  /** A limit that something is below: rounded up to 1/64 in or 0.1 mm, so that it never reads like what is below it. */
  String limit(double length) {
    return fine(Math.ceil((length - ROUNDING) / fine().doubleValue()));
  }

  /** A length that is below a limit: rounded down to 1/64 in or 0.1 mm. */
  String below(double length) {
    return fine(Math.floor((length + ROUNDING) / fine().doubleValue()));
  }

  private String fine(double steps) {
    return LengthText.exact(fine().multiply(BigDecimal.valueOf(steps)).doubleValue(), units);
  }

  private BigDecimal fine() {
    return units == LengthUnit.INCH ? FINE_INCH : FINE_METRIC;
  }
}
