// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import muralbench.base.InputException;
import muralbench.brief.internal.svg.SvgOutline;

/**
 * Scales path data (SVG 1.1, section 8.3.9) and holds it against the grammar on the way. Coordinates and radii are
 * scaled; the turn and the flags of an arc are not. Numbers are multiplied exactly.
 */
final class PathScale {
  /** Arguments of each command; for an arc: radius, radius, turn, large flag, sweep flag, x, y. */
  private static final Map<Character, String> ARGUMENTS = Map.of('M', "xy", 'L', "xy", 'H', "x", 'V', "y",
      'C', "xyxyxy", 'S', "xyxy", 'Q', "xyxy", 'T', "xy", 'A', "rrtlsxy", 'Z', "");
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:[0-9]++(?:\\.[0-9]*+)?+|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?+");
  private static final Pattern FLAG = Pattern.compile("[01]");
  private static final int LONGEST_NUMBER = 100;
  private static final int LARGEST_EXPONENT = 15;
  private static final int SMALLEST_EXPONENT = -30;

  private final String data;
  private final Place place;
  private final String pointer;
  private final StringBuilder scaled = new StringBuilder();
  private int at;
  private boolean relative;

  private PathScale(String data, Place place, String pointer) {
    this.data = data;
    this.place = place;
    this.pointer = pointer;
  }

  /**
   * The path with its lengths multiplied; {@code data} itself where the factor is 1.
   *
   * @param pointer where the path stands in the brief, for errors
   */
  static String scale(String data, BigDecimal factor, String pointer) throws InputException {
    String scaled = new PathScale(data, new Place(factor), pointer).scaled();
    return factor.compareTo(BigDecimal.ONE) == 0 ? data : scaled;
  }

  /** A path with y down as one with y up, on the wall as the drawing says. */
  static String turnedUp(SvgOutline drawn, String pointer) throws InputException {
    return new PathScale(drawn.data(), new Place(drawn.scale(), drawn.left(), drawn.bottom(), true), pointer).scaled();
  }

  /**
   * Where a path goes: x becomes (x - left) factor; y becomes y factor, or (bottom - y) factor where it is turned up.
   */
  private record Place(BigDecimal factor, BigDecimal left, BigDecimal bottom, boolean up) {
    Place(BigDecimal factor) {
      this(factor, BigDecimal.ZERO, BigDecimal.ZERO, false);
    }

    BigDecimal of(char kind, BigDecimal value, boolean relative) {
      BigDecimal moved = switch (kind) {
        case 'x' -> relative ? value : value.subtract(left);
        case 'y' -> up ? (relative ? BigDecimal.ZERO : bottom).subtract(value) : value;
        default -> value;
      };
      BigDecimal scaled = moved.multiply(factor);
      return up ? scaled.round(MathContext.DECIMAL64) : scaled;
    }
  }

  private String scaled() throws InputException {
    skipBlanks();
    if (at == data.length() || Character.toUpperCase(data.charAt(at)) != 'M') {
      throw problem("path.move");
    }
    while (at < data.length()) {
      command();
    }
    return scaled.toString();
  }

  private void command() throws InputException {
    char letter = data.charAt(at);
    String arguments = ARGUMENTS.get(Character.toUpperCase(letter));
    if (arguments == null || letter > 'z') {
      throw problem("path.command");
    }
    // The first point of a path is absolute whatever its letter.
    boolean first = at == start();
    at++;
    append(String.valueOf(letter));
    skipBlanks();
    boolean more = !arguments.isEmpty();
    while (more) {
      relative = letter >= 'a' && !first;
      first = false;
      for (char kind : arguments.toCharArray()) {
        argument(kind);
      }
      more = at < data.length() && isArgumentNext();
    }
  }

  private void argument(char kind) throws InputException {
    boolean flag = kind == 'l' || kind == 's';
    String text = flag ? match(FLAG, "path.flag") : match(NUMBER, "path.number");
    if (flag) {
      append(place.up() && kind == 's' ? text.equals("1") ? "0" : "1" : text);
    } else if (kind == 't') {
      append(place.up() ? plain(value(text).negate()) : text);
    } else {
      append(plain(place.of(kind, value(text), relative)));
    }
    skipBlanks();
    if (at < data.length() && data.charAt(at) == ',') {
      at++;
      skipBlanks();
      if (at == data.length() || !isArgumentNext()) {
        throw problem("path.number");
      }
    }
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  private int start() {
    int start = 0;
    while (" \t\r\n\f".indexOf(data.charAt(start)) >= 0) {
      start++;
    }
    return start;
  }

  private BigDecimal value(String text) throws InputException {
    int exponentAt = Math.max(text.indexOf('e'), text.indexOf('E'));
    if (text.length() > LONGEST_NUMBER || exponentAt >= 0 && text.length() - exponentAt > 5) {
      throw BriefProblem.at(pointer, "magnitude", "value", text.length() > 20 ? text.substring(0, 20) + "…" : text);
    }
    BigDecimal value = new BigDecimal(text);
    int exponent = value.precision() - value.scale();
    if (value.signum() != 0 && (exponent > LARGEST_EXPONENT || exponent < SMALLEST_EXPONENT)) {
      throw BriefProblem.at(pointer, "magnitude", "value", text);
    }
    return value;
  }

  private boolean isArgumentNext() {
    return "+-.0123456789".indexOf(data.charAt(at)) >= 0;
  }

  private String match(Pattern pattern, String expected) throws InputException {
    Matcher matcher = pattern.matcher(data).region(at, data.length());
    if (!matcher.lookingAt()) {
      throw problem(at == data.length() ? "path.end" : expected);
    }
    at = matcher.end();
    return matcher.group();
  }

  private void append(String token) {
    scaled.append(scaled.isEmpty() ? "" : " ").append(token);
  }

  private void skipBlanks() {
    while (at < data.length() && " \t\r\n\f".indexOf(data.charAt(at)) >= 0) {
      at++;
    }
  }

  private InputException problem(String expected) {
    return BriefProblem.at(pointer, "path", "at", at + 1, "expected", BriefProblem.text(expected), "example",
        "\"M 0 36 L 48 36 L 48 72 A 24 24 0 0 1 0 72 Z\"");
  }
}
