// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

/**
 * Text from outside as it may be shown within a line: a control character could otherwise part the line, move the
 * cursor of a terminal, or turn the order of what follows.
 */
public final class PlainLine {
  private PlainLine() {}

  /**
   * The text with every control character, line or paragraph separator, turn of the writing direction and half of a
   * surrogate pair written as in JSON: {@code \n}, {@code \t} or {@code \u001b}. All other text is as it was.
   */
  public static String of(String text) {
    if (text.codePoints().noneMatch(PlainLine::isUnfit)) {
      return text;
    }
    StringBuilder plain = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(c -> {
      if (isUnfit(c)) {
        plain.append(escaped(c));
      } else {
        plain.appendCodePoint(c);
      }
    });
    return plain.toString();
  }

  private static boolean isUnfit(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE -> true;
      // Embeddings, overrides and isolates (Unicode Standard Annex 9, 2).
      default -> c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    };
  }

  private static String escaped(int c) {
    return switch (c) {
      case '\n' -> "\\n";
      case '\r' -> "\\r";
      case '\t' -> "\\t";
      default -> String.format("\\u%04x", c);
    };
  }
}
