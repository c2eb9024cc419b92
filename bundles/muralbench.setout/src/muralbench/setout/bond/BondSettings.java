// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthFormatException;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;

/** Reads the settings of a request, with errors that name the setting. */
final class BondSettings {
  private static final Messages TEXTS = Messages.of(BondSettings.class);

  private final BondRequest request;

  BondSettings(BondRequest request) {
    this.request = request;
  }

  boolean has(String name) {
    return !text(name, "").isEmpty();
  }

  String text(String name, String standard) {
    return request.settings().getOrDefault(name, standard).trim();
  }

  /** One of some words. */
  String word(String name, String standard, String... known) throws InputException {
    String word = text(name, standard);
    for (String one : known) {
      if (one.equals(word)) {
        return word;
      }
    }
    throw new InputException("bond." + name, TEXTS.text("setting.word", "value", word),
        TEXTS.text("setting.word.remedy", "known", String.join(", ", known)));
  }

  /** A length above 0, mm. */
  double length(String name, double standard) throws InputException {
    return has(name) ? length(name, text(name, "")) : standard;
  }

  /** Lengths above 0 separated by commas, mm. */
  List<Double> lengths(String name) throws InputException {
    List<Double> lengths = new ArrayList<>();
    for (String part : parts(name, ",")) {
      lengths.add(length(name, part));
    }
    return lengths;
  }

  /** Whole numbers above 0 separated by commas. */
  List<Integer> counts(String name, int most) throws InputException {
    List<Integer> counts = new ArrayList<>();
    for (String part : parts(name, ",")) {
      try {
        int count = Integer.parseInt(part);
        if (count < 1 || count > most) {
          throw new NumberFormatException(part);
        }
        counts.add(count);
      } catch (NumberFormatException e) {
        throw new InputException("bond." + name, TEXTS.text("setting.count", "value", part),
            TEXTS.text("setting.count.remedy", "most", most), e);
      }
    }
    return counts;
  }

  /** The pieces of a text between separators, trimmed, empty ones left out. */
  List<String> parts(String name, String separator) {
    List<String> parts = new ArrayList<>();
    for (String part : text(name, "").split(separator)) {
      if (!part.isBlank()) {
        parts.add(part.trim());
      }
    }
    return parts;
  }

  static double length(String name, String text) throws InputException {
    double length;
    try {
      length = LengthText.parse(text, LengthUnit.MILLIMETRE);
    } catch (LengthFormatException e) {
      throw new InputException("bond." + name, e.getMessage(), TEXTS.text("setting.length.remedy"), e);
    }
    if (length <= 0) {
      throw new InputException("bond." + name, TEXTS.text("setting.positive", "value", text), TEXTS.text("setting.length.remedy"));
    }
    return length;
  }

  static InputException refused(String name, String key, Object... values) {
    return new InputException("bond." + name, TEXTS.text(key, values), TEXTS.text(key + ".remedy", values));
  }
}
