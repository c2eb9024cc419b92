// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.svg;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers and lengths as attributes of SVG write them; decimals of up to 34 digits. */
final class SvgNumber {
  static final MathContext DIGITS = MathContext.DECIMAL128;

  private static final String NUMBER = "[+-]?(?:[0-9]{1,20}(?:\\.[0-9]{0,30})?|\\.[0-9]{1,30})(?:[eE][+-]?[0-9]{1,2})?";
  private static final Pattern LENGTH = Pattern.compile("\\s*(" + NUMBER + ")\\s*([a-zA-Z%]*)\\s*");
  private static final Pattern LIST = Pattern.compile("\\s*" + NUMBER + "(?:\\s*[\\s,]\\s*" + NUMBER + ")*\\s*");
  private static final Pattern ONE = Pattern.compile(NUMBER);

  /** Millimetres for the units of CSS, with 96 px to the inch. */
  private static final Map<String, BigDecimal> UNITS = Map.of("", inches(96), "px", inches(96), "in", inches(1),
      "pt", inches(72), "pc", inches(6), "mm", BigDecimal.ONE, "cm", BigDecimal.TEN, "q", BigDecimal.valueOf(25, 2));

  private SvgNumber() {}

  private static BigDecimal inches(int part) {
    return BigDecimal.valueOf(254, 1).divide(BigDecimal.valueOf(part), DIGITS);
  }

  /** Millimetres for one px. */
  static BigDecimal pixel() {
    return UNITS.get("px");
  }

  /** A length above 0, mm; none for percent and what depends on a font. */
  static Optional<BigDecimal> length(String text) {
    Matcher matcher = LENGTH.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    BigDecimal unit = UNITS.get(matcher.group(2).toLowerCase(Locale.ROOT));
    return Optional.ofNullable(unit).map(new BigDecimal(matcher.group(1))::multiply).filter(it -> it.signum() > 0);
  }

  /** Numbers divided by blanks or commas; none if the text is something else. */
  static List<BigDecimal> list(String text) {
    List<BigDecimal> numbers = new ArrayList<>();
    if (text.length() < 1000 && LIST.matcher(text).matches()) {
      Matcher matcher = ONE.matcher(text);
      while (matcher.find()) {
        numbers.add(new BigDecimal(matcher.group()));
      }
    }
    return numbers;
  }
}
