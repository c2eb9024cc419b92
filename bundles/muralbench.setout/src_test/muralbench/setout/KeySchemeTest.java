// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class KeySchemeTest {
  private final KeyScheme scheme = KeyScheme.coursePosition();

  @Test
  void numbersArePaddedToOneWidth() {
    assertEquals("A-03-12", scheme.key("A", 3, 9, 12, 40, 0));
    assertEquals("A-003-12", scheme.key("A", 3, 120, 12, 40, 0));
    assertEquals("A-03-0012", scheme.key("A", 3, 9, 12, 1000, 0));
  }

  @Test
  void furtherPiecesOfACellGetALetter() {
    assertEquals("A-03-12b", scheme.key("A", 3, 9, 12, 40, 1));
    assertEquals("A-03-12z", scheme.key("A", 3, 9, 12, 40, 25));
    assertEquals("A-03-12aa", scheme.key("A", 3, 9, 12, 40, 26));
  }

  @Test
  void noTwoPartsShareAKey() {
    Set<String> keys = new HashSet<>();
    for (int part = 0; part < 2000; part++) {
      keys.add(scheme.key("A", 1, 1, 1, 1, part));
    }
    assertEquals(2000, keys.size());
  }
}
