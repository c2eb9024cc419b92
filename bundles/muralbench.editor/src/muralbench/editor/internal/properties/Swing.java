// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import muralbench.base.Messages;
import muralbench.base.length.LengthUnit;
import muralbench.model.Site;

/** How far the temperature swings, as text: {@code 115 °F} or {@code 64 °C}, blank when not known. */
final class Swing {
  private static final Messages TEXTS = ModelProperties.TEXTS;
  private static final Pattern TEXT = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:°?\\s*([FC]))?");
  private static final double FAHRENHEIT = 9.0 / 5;

  private final Site site;
  private final boolean fahrenheit;

  Swing(Site site, LengthUnit units) {
    this.site = site;
    fahrenheit = units == LengthUnit.INCH;
  }

  Property line() {
    return Property.text("temperatureSwing", "general", () -> text(site.getTemperatureSwing()),
        text -> parse(text).map(this::text).orElse(text), this::refuse,
        text -> site.setTemperatureSwing(parse(text).orElseThrow()));
  }

  private String text(double celsius) {
    double shown = fahrenheit ? celsius * FAHRENHEIT : celsius;
    return celsius == 0 ? "" : BigDecimal.valueOf(shown).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros()
        .toPlainString() + (fahrenheit ? " °F" : " °C");
  }

  private Optional<String> refuse(String text) {
    return parse(text).isPresent() ? Optional.empty() : Optional.of(TEXTS.text("refuse.swing"));
  }

  /** °C. */
  private Optional<Double> parse(String text) {
    if (text.isBlank()) {
      return Optional.of(0.0);
    }
    Matcher found = TEXT.matcher(text.strip().toUpperCase(Locale.ROOT));
    if (!found.matches()) {
      return Optional.empty();
    }
    double number = Double.parseDouble(found.group(1));
    boolean given = found.group(2) == null ? fahrenheit : found.group(2).equals("F");
    return Optional.of(given ? number / FAHRENHEIT : number);
  }
}
