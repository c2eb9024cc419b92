// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import muralbench.base.InputException;
import muralbench.base.Messages;

/** Numbers and fractions such as 1/3 as they are typed. */
final class Share {
  private static final Messages TEXTS = Messages.of(Share.class);
  private static final int LARGEST_DENOMINATOR = 16;

  private Share() {}

  /** The shortest text for a number: a whole number, a fraction, or a decimal. */
  static String text(double value) {
    for (int below = 1; below <= LARGEST_DENOMINATOR; below++) {
      double above = Math.rint(value * below);
      if (above / below == value && Math.abs(above) < 1e6) {
        return below == 1 ? String.valueOf((long) above) : (long) above + "/" + below;
      }
    }
    return String.valueOf(value);
  }

  /**
   * The number a text says; 0 if it is blank.
   *
   * @param name key of the field's name, for errors
   */
  static double of(String text, String name) throws InputException {
    String[] parts = text.isBlank() ? new String[] {"0"} : text.strip().split("/", -1);
    try {
      double value = Double.parseDouble(parts[0]) / (parts.length == 2 ? Double.parseDouble(parts[1]) : 1);
      if (parts.length <= 2 && Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Told below.
    }
    throw new InputException(TEXTS.text(name), TEXTS.text("number.bad", "value", text.strip()),
        TEXTS.text("number.bad.remedy"));
  }
}
