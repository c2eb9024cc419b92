// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import muralbench.base.Messages;
import muralbench.base.length.LengthFormatException;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.base.place.PlaceIds;

/** Lines whose text stands for something else: lengths, numbers, shares and names. */
final class Entries {
  private static final Messages TEXTS = ModelProperties.TEXTS;
  private static final int LARGEST_DENOMINATOR = 16;

  private Entries() {}

  /** What a length has to be. */
  enum Range {
    /** Any length. */
    ANY,
    /** 0 or more. */
    NOT_NEGATIVE,
    /** More than 0. */
    POSITIVE
  }

  /** A length in the mural's units; units may be typed too. */
  static Property length(String id, String group, LengthUnit unit, Range range, Supplier<Double> get,
      Consumer<Double> set) {
    return Property.text(id, group, () -> LengthText.exact(get.get(), unit),
        text -> LengthText.exact(parsed(text, unit), unit), text -> refuse(text, unit, range),
        text -> set.accept(parsed(text, unit)));
  }

  private static Optional<String> refuse(String text, LengthUnit unit, Range range) {
    try {
      double length = LengthText.parse(text, unit);
      if (range == Range.POSITIVE && !(length > 0)) {
        return Optional.of(TEXTS.text("refuse.positive"));
      }
      return range == Range.NOT_NEGATIVE && length < 0 ? Optional.of(TEXTS.text("refuse.negative")) : Optional.empty();
    } catch (LengthFormatException e) {
      return Optional.of(e.getMessage());
    }
  }

  private static double parsed(String text, LengthUnit unit) {
    try {
      return LengthText.parse(text, unit);
    } catch (LengthFormatException e) {
      throw new IllegalArgumentException(e.getMessage(), e);
    }
  }

  /** A length of 0 or more that may be left blank, which stands for {@code unknown}. */
  static Property lengthOrBlank(String id, String group, LengthUnit unit, double unknown, Supplier<Double> get,
      Consumer<Double> set) {
    return Property.text(id, group, () -> isUnknown(get.get(), unknown) ? "" : LengthText.exact(get.get(), unit),
        text -> text.isBlank() ? "" : LengthText.exact(parsed(text, unit), unit),
        text -> text.isBlank() ? Optional.empty() : refuse(text, unit, Range.NOT_NEGATIVE),
        text -> set.accept(text.isBlank() ? unknown : parsed(text, unit)));
  }

  /** A number of 0 or more that may be left blank, which stands for {@code unknown}. */
  static Property numberOrBlank(String id, String group, double unknown, Supplier<Double> get,
      Consumer<Double> set) {
    return Property.text(id, group, () -> isUnknown(get.get(), unknown) ? "" : number(get.get()),
        text -> text.isBlank() ? "" : number(number(text).orElseThrow()),
        text -> text.isBlank() || isNumber(text, true) ? Optional.empty() : Optional.of(TEXTS.text("refuse.unknown")),
        text -> set.accept(text.isBlank() ? unknown : number(text).orElseThrow()));
  }

  /** A whole number of 0 or more that may be left blank, which stands for 0. */
  static Property countOrBlank(String id, String group, Supplier<Integer> get, Consumer<Integer> set) {
    return Property.text(id, group, () -> get.get() == 0 ? "" : String.valueOf(get.get()), String::strip,
        text -> text.isBlank() || text.strip().matches("[0-9]{1,6}") ? Optional.empty()
            : Optional.of(TEXTS.text("refuse.count")),
        text -> set.accept(text.isBlank() ? 0 : Integer.parseInt(text.strip())));
  }

  /** A value below 0 is never known, whatever else stands for that. */
  private static boolean isUnknown(double value, double unknown) {
    return value == unknown || value < 0;
  }

  /** Whether a text is a plain number or a fraction. */
  static boolean isNumber(String text, boolean notNegative) {
    return number(text).filter(value -> !notNegative || value >= 0).isPresent();
  }

  /** The value of a text that {@link #isNumber}. */
  static double parsed(String text) {
    return number(text).orElseThrow();
  }

  /** A plain number or a fraction such as 1/3. */
  static Property number(String id, String group, Supplier<Double> get, Consumer<Double> set) {
    return Property.text(id, group, () -> number(get.get()), text -> number(number(text).orElseThrow()),
        text -> number(text).isPresent() ? Optional.empty() : Optional.of(TEXTS.text("refuse.number")),
        text -> set.accept(number(text).orElseThrow()));
  }

  private static String number(double value) {
    for (int denominator = 1; denominator <= LARGEST_DENOMINATOR; denominator++) {
      double numerator = Math.rint(value * denominator);
      if (numerator / denominator == value && Math.abs(numerator) < 1e6) {
        return denominator == 1 ? String.valueOf((long) numerator) : (long) numerator + "/" + denominator;
      }
    }
    return String.valueOf(value);
  }

  private static Optional<Double> number(String text) {
    try {
      String[] parts = text.strip().split("/", -1);
      double value = Double.parseDouble(parts[0]) / (parts.length == 2 ? Double.parseDouble(parts[1]) : 1);
      return parts.length <= 2 && Double.isFinite(value) ? Optional.of(value) : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /** The id of a panel or opening; {@code taken} are the ids of all panels and openings. */
  static Property place(boolean panel, Supplier<String> get, Supplier<Set<String>> taken, Consumer<String> set) {
    return Property.text("id", "general", get, String::strip,
        text -> refusePlace(text.strip(), panel, get.get(), taken.get()), text -> set.accept(text.strip()));
  }

  private static Optional<String> refusePlace(String id, boolean panel, String own, Set<String> taken) {
    if (id.isEmpty()) {
      return Optional.of(TEXTS.text("refuse.blank"));
    }
    if (panel && !PlaceIds.isPanelId(id)) {
      return Optional.of(refusal(PlaceIds.panelProblem(id), PlaceIds.panelRemedy()));
    }
    List<String> others = taken.stream().filter(other -> !other.equals(own)).toList();
    return PlaceIds.taken(id, others)
        .map(other -> refusal(PlaceIds.takenProblem(id, other), PlaceIds.takenRemedy()));
  }

  private static String refusal(String problem, String remedy) {
    return TEXTS.text("refuse", "problem", problem, "remedy", remedy);
  }

  /** A name that no other thing may have; {@code taken} are the names in use. */
  static Property id(String group, Supplier<String> get, Supplier<Set<String>> taken, Consumer<String> set) {
    return Property.text("id", group, get, String::strip, text -> {
      String name = text.strip();
      if (name.isEmpty()) {
        return Optional.of(TEXTS.text("refuse.blank"));
      }
      boolean other = !name.equals(get.get()) && taken.get().contains(name);
      return other ? Optional.of(TEXTS.text("refuse.twice", "id", name)) : Optional.empty();
    }, text -> set.accept(text.strip()));
  }

  /** Words without any rule. */
  static Property words(String id, String group, Supplier<String> get, Consumer<String> set) {
    return Property.text(id, group, get, text -> Optional.empty(), set);
  }

  /** One of the values of an enumeration, named by texts {@code prefix.NAME}. */
  static <E extends Enum<E>> Property choice(String id, String group, Class<E> type, Supplier<E> get, Consumer<E> set) {
    E[] values = type.getEnumConstants();
    String[] labels = new String[values.length];
    for (int i = 0; i < values.length; i++) {
      labels[i] = TEXTS.text(id + "." + values[i].name());
    }
    Function<Integer, E> value = index -> values[index];
    return Property.choice(id, group, labels, () -> get.get().ordinal(), index -> set.accept(value.apply(index)));
  }
}
