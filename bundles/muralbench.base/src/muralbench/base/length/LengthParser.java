// SPDX-License-Identifier: EPL-2.0
package muralbench.base.length;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import muralbench.base.Messages;
import muralbench.base.length.LengthFormatException.Problem;

/** The grammar of {@link LengthText#parse}. */
final class LengthParser {
  private static final Messages MESSAGES = Messages.of(LengthParser.class);

  /** Longer texts are not looked at; the longest that {@link LengthText#exact} writes is about 350 characters. */
  private static final int LONGEST = 1000;

  /** Joins two numbers; with a blank before it alone it would be a sign, which a length has in front only. */
  private static final String DASH = " - |- ?";

  /** A number: whole-and-fraction, fraction, or decimal; four groups. Runs of digits are never split (++). */
  private static final String NUMBER =
      "(?:(?:(\\d++)(?:" + DASH + "| ))?(\\d++) ?/ ?(\\d++)|(\\d++\\.?+\\d*+|\\.\\d++))";
  private static final String TERM = NUMBER + "(?: ?([A-Za-z]++\\.?+|['\"]))?";
  private static final Pattern LENGTH = Pattern.compile("([+-]?) ?" + TERM + "(?:(?:" + DASH + "| ?)" + TERM + ")?");
  private static final int GROUPS_OF_TERM = 5;

  private static final BigDecimal INCH = new BigDecimal("25.4");
  private static final BigDecimal FOOT = new BigDecimal("304.8");
  private static final Map<String, BigDecimal> UNITS = units();
  private static final Set<String> METRIC_SYMBOLS = Set.of("mm", "cm", "m");

  private final String text;
  private final LengthUnit unit;

  private LengthParser(String text, LengthUnit unit) {
    this.text = text;
    this.unit = unit;
  }

  static double parse(String text, LengthUnit unit) throws LengthFormatException {
    return new LengthParser(text, unit).read();
  }

  /** {@code numerator / denominator} units of {@code factor} millimetres each, rounded once. */
  static double millimetres(BigDecimal numerator, BigDecimal denominator, BigDecimal factor) {
    return numerator.multiply(factor).divide(denominator, MathContext.DECIMAL128).doubleValue();
  }

  private double read() throws LengthFormatException {
    String plain = text == null ? "" : plain(text);
    if (plain.isEmpty()) {
      throw problem(Problem.EMPTY, "length.empty", "");
    }
    if (plain.matches("[+-]? ?(?i:nan|inf|infinity|∞)")) {
      throw problem(Problem.UNREADABLE, "length.notNumber", "");
    }
    Matcher matcher = LENGTH.matcher(plain);
    if (plain.length() > LONGEST || !matcher.matches()) {
      throw problem(Problem.UNREADABLE, plain.indexOf(',') >= 0 ? "length.comma" : "length.unreadable", "");
    }
    double size = total(matcher).doubleValue();
    if (size > LengthText.LIMIT) {
      throw problem(Problem.OUT_OF_RANGE, "length.outOfRange", "");
    }
    return matcher.group(1).equals("-") ? -size : size;
  }

  private BigDecimal total(Matcher matcher) throws LengthFormatException {
    int second = 2 + GROUPS_OF_TERM;
    boolean single = matcher.group(second + 1) == null && matcher.group(second + 3) == null;
    BigDecimal factor = factor(matcher.group(2 + 4), BigDecimal.valueOf(unit.millimetres()));
    if (single) {
      return value(matcher, 2, factor);
    }
    // Two terms are feet and inches and nothing else; the feet are then a whole number.
    BigDecimal secondFactor = factor(matcher.group(second + 4), INCH);
    String feet = matcher.group(2 + 3);
    if (factor.compareTo(FOOT) != 0 || secondFactor.compareTo(INCH) != 0 || feet == null || feet.contains(".")) {
      throw problem(Problem.UNREADABLE, "length.unreadable", "");
    }
    return value(matcher, 2, FOOT).add(value(matcher, second, INCH));
  }

  private BigDecimal value(Matcher matcher, int group, BigDecimal factor) throws LengthFormatException {
    if (matcher.group(group + 3) != null) {
      return new BigDecimal(matcher.group(group + 3)).multiply(factor);
    }
    BigDecimal numerator = new BigDecimal(matcher.group(group + 1));
    BigDecimal denominator = new BigDecimal(matcher.group(group + 2));
    boolean mixed = matcher.group(group) != null;
    // 3-5/4 is more likely a slip than a length.
    if (denominator.signum() == 0 || mixed && numerator.compareTo(denominator) >= 0) {
      throw problem(Problem.UNREADABLE, "length.unreadable", "");
    }
    BigDecimal whole = mixed ? new BigDecimal(matcher.group(group)) : BigDecimal.ZERO;
    return whole.multiply(denominator).add(numerator).multiply(factor).divide(denominator, MathContext.DECIMAL128);
  }

  private BigDecimal factor(String name, BigDecimal otherwise) throws LengthFormatException {
    if (name == null) {
      return otherwise;
    }
    String plain = name.endsWith(".") ? name.substring(0, name.length() - 1) : name;
    String lower = plain.toLowerCase(Locale.ROOT);
    // The capital letters of metric symbols tell sizes: 5 Mm is five thousand kilometres (BIPM, The SI Brochure, 3).
    BigDecimal factor = METRIC_SYMBOLS.contains(lower) ? UNITS.get(plain) : UNITS.get(lower);
    if (factor == null) {
      boolean power = lower.equals("e");
      throw power ? problem(Problem.UNREADABLE, "length.unreadable", "")
          : problem(Problem.UNKNOWN_UNIT, "length.unknownUnit", name);
    }
    return factor;
  }

  private LengthFormatException problem(Problem problem, String key, String unitName) {
    String example = unit == LengthUnit.INCH ? "5 ft 3-1/2 in" : "1600 mm";
    String clipped = text == null || text.length() <= 60 ? String.valueOf(text) : text.substring(0, 60) + "…";
    String message = MESSAGES.text(key, "text", clipped, "unit", unitName, "example", example);
    return new LengthFormatException(problem, text == null ? "" : text, message, example);
  }

  /** One kind of quote, prime, dash, slash and single blanks; {@code ½} becomes {@code 1/2}. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder(text.length() + 8);
    text.chars().limit(LONGEST + 1L).forEach(c -> plain.append(plain((char) c)));
    return plain.toString().replace("''", "\"").replaceAll(" +", " ").strip();
  }

  private static String plain(char c) {
    return switch (c) {
      case '′', '’', '‘', '´', '`' -> "'";
      case '″', '”', '“', '‶' -> "\"";
      case '−', '–', '—', '‐', '‑' -> "-";
      case '⁄', '∕' -> "/";
      default -> Character.isWhitespace(c) || Character.isSpaceChar(c) ? " "
          : Character.getType(c) == Character.OTHER_NUMBER ? fraction(c) : String.valueOf(c);
    };
  }

  /** {@code ½} is taken apart by its compatibility decomposition in the Unicode standard. */
  private static String fraction(char c) {
    String parts = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKD);
    return parts.indexOf('⁄') > 0 ? " " + parts.replace('⁄', '/') : String.valueOf(c);
  }

  private static Map<String, BigDecimal> units() {
    Map<String, BigDecimal> units = new HashMap<>();
    put(units, INCH, "in", "inch", "inches", "\"");
    put(units, FOOT, "ft", "foot", "feet", "'");
    put(units, BigDecimal.ONE, "mm", "millimetre", "millimetres", "millimeter", "millimeters");
    put(units, BigDecimal.TEN, "cm", "centimetre", "centimetres", "centimeter", "centimeters");
    put(units, BigDecimal.valueOf(1000), "m", "metre", "metres", "meter", "meters");
    return Map.copyOf(units);
  }

  private static void put(Map<String, BigDecimal> units, BigDecimal factor, String... names) {
    for (String name : names) {
      units.put(name, factor);
    }
  }
}
