// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.math.BigDecimal;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import muralbench.base.InputException;

/**
 * Scales path data (SVG 1.1, section 8.3.9) and holds it against the grammar on the way. Coordinates and radii are
 * scaled; the turn and the flags of an arc are not. Numbers are multiplied exactly.
 */
final class PathScale {
  /** Arguments of each command; for an arc: radius, radius, turn, flag, flag, x, y. */
  private static final Map<Character, String> ARGUMENTS = Map.of('M', "nn", 'L', "nn", 'H', "n", 'V', "n",
      'C', "nnnnnn", 'S', "nnnn", 'Q', "nnnn", 'T', "nn", 'A', "nntffnn", 'Z', "");
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:[0-9]++(?:\\.[0-9]*+)?+|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?+");
  private static final Pattern FLAG = Pattern.compile("[01]");
  private static final int LONGEST_NUMBER = 100;
  private static final int LARGEST_EXPONENT = 15;
  private static final int SMALLEST_EXPONENT = -30;

  private final String data;
  private final BigDecimal factor;
  private final String pointer;
  private final StringBuilder scaled = new StringBuilder();
  private int at;

  private PathScale(String data, BigDecimal factor, String pointer) {
    this.data = data;
    this.factor = factor;
    this.pointer = pointer;
  }

  /**
   * The path with its lengths multiplied; {@code data} itself where the factor is 1.
   *
   * @param pointer where the path stands in the brief, for errors
   */
  static String scale(String data, BigDecimal factor, String pointer) throws InputException {
    String scaled = new PathScale(data, factor, pointer).scaled();
    return factor.compareTo(BigDecimal.ONE) == 0 ? data : scaled;
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
    at++;
    append(String.valueOf(letter));
    skipBlanks();
    boolean more = !arguments.isEmpty();
    while (more) {
      for (char kind : arguments.toCharArray()) {
        argument(kind);
      }
      more = at < data.length() && isArgumentNext();
    }
  }

  private void argument(char kind) throws InputException {
    String text = kind == 'f' ? match(FLAG, "path.flag") : match(NUMBER, "path.number");
    if (kind == 'n') {
      BigDecimal value = value(text);
      append(value.signum() == 0 ? "0" : value.multiply(factor).stripTrailingZeros().toPlainString());
    } else {
      append(text);
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
