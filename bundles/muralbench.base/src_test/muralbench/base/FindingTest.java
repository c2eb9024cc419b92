// SPDX-License-Identifier: EPL-2.0
package muralbench.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FindingTest {
  @Test
  void valuesAreACopy() {
    Map<String, Object> values = new HashMap<>(Map.of("joint", 3.175));
    Finding finding = finding(values);
    values.clear();
    assertEquals(Map.of("joint", 3.175), finding.values());
    assertThrows(UnsupportedOperationException.class, () -> finding.values().clear());
  }

  @Test
  void nothingIsMissing() {
    assertThrows(NullPointerException.class,
        () -> new Finding("joint.narrow", Grade.ERROR, "A", "too narrow", null, "common practice", Map.of()));
  }

  private static Finding finding(Map<String, Object> values) {
    return new Finding("joint.narrow", Grade.ERROR, "A", "too narrow", "Widen it.", "common practice", values);
  }
}
