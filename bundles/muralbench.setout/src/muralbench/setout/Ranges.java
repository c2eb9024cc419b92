// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;

/**
 * Refuses values no wall can have. What a value is called comes from the key {@code read.value.} and its name.
 *
 * @param place id of the panel, opening or tile kind the values belong to
 * @param units units for the messages
 */
record Ranges(String place, LengthUnit units) {
  /** No length or coordinate may be larger, mm: beyond lies a wrong unit, not a wall. */
  static final double LARGEST = 1e6;

  private static final Messages MESSAGES = Messages.of(Ranges.class);

  /** An error of a kind, with the remedy of the same key. */
  InputException error(String key, Object... values) {
    return new InputException(place, MESSAGES.text(key, values), MESSAGES.text(key + ".remedy"));
  }

  /** An error that follows from another, with the remedy of that. */
  InputException because(InputException other, String key, Object... values) {
    return new InputException(place, MESSAGES.text(key, values), other.remedy(), other);
  }

  /** A number without a unit, finite. */
  double plain(String name, double value) throws InputException {
    if (!Double.isFinite(value)) {
      throw new InputException(place, MESSAGES.text("read.number", "what", name(name)),
          MESSAGES.text("read.plain.remedy"));
    }
    return value;
  }

  /** A coordinate, mm. */
  double position(String name, double value) throws InputException {
    return within(name(name), value);
  }

  /** A coordinate of a numbered corner, mm. */
  double corner(int number, double value) throws InputException {
    return within(MESSAGES.text("read.value.corner", "number", number), value);
  }

  /** A length above 0, mm. */
  double positive(String name, double value) throws InputException {
    if (!(within(name(name), value) > 0)) {
      throw error("read.positive", "what", name(name), "value", length(value));
    }
    return value;
  }

  /** A length of 0 or more, mm. */
  double notNegative(String name, double value) throws InputException {
    if (within(name(name), value) < 0) {
      throw error("read.negative", "what", name(name), "value", length(value));
    }
    return value;
  }

  /** A length for a message. */
  String length(double value) {
    return LengthText.fine(value, units);
  }

  private double within(String what, double value) throws InputException {
    if (Double.isNaN(value)) {
      throw error("read.number", "what", what);
    }
    if (Math.abs(value) > LARGEST) {
      throw error("read.large", "what", what);
    }
    return value;
  }

  /** What a value is called in messages. */
  String called(String name) {
    return name(name);
  }

  private static String name(String name) {
    return MESSAGES.text("read.value." + name);
  }
}
