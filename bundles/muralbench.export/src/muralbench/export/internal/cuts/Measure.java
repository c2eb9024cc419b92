// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;

/**
 * A length as the cutter reads it, rounded to 1/16 in or 0.5 mm.
 *
 * @param text with a fraction and its unit, such as {@code 5-7/16 in}
 * @param value the same as a number of units, such as 5.4375; exact, since sixteenths are binary fractions
 */
record Measure(String text, double value) {
  /** A length in millimetres, rounded and shown in the given unit. */
  static Measure of(double millimetres, LengthUnit unit) {
    double rounded = LengthText.rounded(millimetres, unit);
    double value = unit == LengthUnit.INCH ? Math.rint(rounded / unit.millimetres() * 16) / 16 : rounded;
    return new Measure(LengthText.shown(millimetres, unit), value);
  }
}
