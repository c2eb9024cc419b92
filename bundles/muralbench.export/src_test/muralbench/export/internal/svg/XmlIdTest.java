// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;

class XmlIdTest {
  @Test
  void keepsAKeyThatIsAName() {
    assertEquals("A-03-12b", XmlId.of("A-03-12b"));
  }

  @Test
  void neverBeginsWithADigit() {
    assertEquals("_x31_-01-01", XmlId.of("1-01-01"));
  }

  @Test
  void differentKeysStayDifferent() {
    assertNotEquals(XmlId.of("_x31_-01"), XmlId.of("1-01"));
    assertNotEquals(XmlId.of("a b"), XmlId.of("a_b"));
  }
}
