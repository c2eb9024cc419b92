// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;

class PlainLineTest {
  @Test
  void whatATerminalWouldObeyIsSpelledOut() {
    assertEquals("a\\nb\\r\\tc", PlainLine.of("a\nb\r\tc"));
    assertEquals("\\u001b[31m \\u007f \\u0085 \\u009b \\u0000", PlainLine.of("\u001b[31m \u007f \u0085 \u009b \u0000"));
    assertEquals("\\u2028\\u2029\\u202e\\u2066", PlainLine.of("\u2028\u2029\u202e\u2066"));
    assertEquals("\\ud83c!", PlainLine.of("\ud83c!"));
  }

  @Test
  void allOtherTextIsAsItWas() {
    String text = "Høst \"½\" \\ 潮 \ud83c\udf0a a\u0301 \u200d é";
    assertSame(text, PlainLine.of(text));
  }
}
