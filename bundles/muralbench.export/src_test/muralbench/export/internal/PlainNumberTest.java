// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class PlainNumberTest {
  @Test
  void showsNoExponent() {
    assertEquals("0.00000001", PlainNumber.text(1e-8));
    assertEquals("12345678900", PlainNumber.text(1.23456789e10));
  }

  @Test
  void zeroHasNoSign() {
    assertEquals("0", PlainNumber.text(-0.0));
    assertEquals("0", PlainNumber.rounded(-0.001, 2));
  }

  @Test
  void isTheShortestTextThatReadsBackExactly() {
    assertEquals("0.1", PlainNumber.text(0.1));
    // Java's own text of this number has 17 digits before release 19 (JDK-4511638).
    assertEquals("20000000000000000000000", PlainNumber.text(2.0e22));
    assertEquals(155.575 * 7, Double.parseDouble(PlainNumber.text(155.575 * 7)));
  }

  @Test
  void roundsHalfAwayFromZero() {
    assertEquals("0.13", PlainNumber.rounded(0.125, 2));
    assertEquals("-0.13", PlainNumber.rounded(-0.125, 2));
    assertEquals("24", PlainNumber.rounded(24, 2));
  }

  @Test
  void refusesWhatIsNotFinite() {
    assertThrows(NumberFormatException.class, () -> PlainNumber.text(Double.NaN));
  }
}
