// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads one JSON object (RFC 8259) whose values are texts and whole numbers: all the JSON this room needs, without
 * bringing a library into it.
 */
final class FlatJson {
  private static final Pattern TEXT =
      Pattern.compile("\"((?:[^\"\\\\\\p{Cntrl}]|\\\\(?:[\"\\\\/bfnrt]|u[0-9a-fA-F]{4}))*+)\"");
  private static final Pattern NUMBER = Pattern.compile("-?(?:0|[1-9][0-9]{0,17})(?![0-9.eE])");
  private static final Pattern ESCAPE = Pattern.compile("\\\\(?:u([0-9a-fA-F]{4})|(.))");

  private final String json;
  private int at;

  private FlatJson(String json) {
    this.json = json;
  }

  /**
   * The members: texts as {@link String}, numbers as {@link Long}.
   *
   * @throws IllegalArgumentException if it is anything else, or names a member twice
   */
  static Map<String, Object> parse(String json) {
    return new FlatJson(json).object();
  }

  private Map<String, Object> object() {
    Map<String, Object> members = new LinkedHashMap<>();
    expect('{');
    boolean more = peek() != '}';
    while (more) {
      String name = text();
      expect(':');
      if (members.put(name, peek() == '"' ? text() : number()) != null) {
        throw wrong();
      }
      more = peek() == ',';
      if (more) {
        expect(',');
      }
    }
    expect('}');
    if (peek() != 0) {
      throw wrong();
    }
    return members;
  }

  private String text() {
    peek();
    String raw = match(TEXT).group(1);
    return ESCAPE.matcher(raw).replaceAll(m -> Matcher.quoteReplacement(m.group(1) == null ? unescaped(m.group(2))
        : String.valueOf((char) Integer.parseInt(m.group(1), 16))));
  }

  private static String unescaped(String letter) {
    int index = "bfnrt".indexOf(letter);
    return index < 0 ? letter : "\b\f\n\r\t".substring(index, index + 1);
  }

  private Long number() {
    return Long.valueOf(match(NUMBER).group());
  }

  private Matcher match(Pattern pattern) {
    Matcher matcher = pattern.matcher(json).region(at, json.length());
    if (!matcher.lookingAt()) {
      throw wrong();
    }
    at = matcher.end();
    return matcher;
  }

  /** The next character that is no blank, or 0 at the end. */
  private char peek() {
    while (at < json.length() && " \t\r\n".indexOf(json.charAt(at)) >= 0) {
      at++;
    }
    return at < json.length() ? json.charAt(at) : 0;
  }

  private void expect(char c) {
    if (peek() != c) {
      throw wrong();
    }
    at++;
  }

  private IllegalArgumentException wrong() {
    return new IllegalArgumentException("not a flat JSON object at character " + at);
  }
}
