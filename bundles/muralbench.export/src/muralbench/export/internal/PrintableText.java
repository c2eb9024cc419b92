// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal;

/** Texts that people typed, made fit for files: XML 1.0 and spreadsheets know no control characters. */
public final class PrintableText {
  private PrintableText() {}

  /** The text without what XML 1.0 (section 2.2) has no character for and without other control characters. */
  public static String of(String text) {
    StringBuilder kept = new StringBuilder(text.length());
    text.codePoints().filter(PrintableText::printable).forEach(kept::appendCodePoint);
    return kept.toString();
  }

  private static boolean printable(int c) {
    boolean surrogate = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
    return !Character.isISOControl(c) && !surrogate && (c & 0xFFFE) != 0xFFFE;
  }
}
