// SPDX-License-Identifier: EPL-2.0
package muralbench.base.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlaceIdsTest {
  @ParameterizedTest
  @ValueSource(strings = {"A", "b2", "North_wall_16abc"})
  void takesShortPlainIds(String id) {
    assertTrue(PlaceIds.isPanelId(id));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "A B", "A-1", "a/b", "\u00c4", "North_wall_16abcd"})
  void refusesWhatKeysAndFileNamesCannotStartWith(String id) {
    assertFalse(PlaceIds.isPanelId(id));
  }

  @Test
  void capitalsMakeNoDifference() {
    assertEquals(Optional.of("a1"), PlaceIds.taken("A1", List.of("B", "a1")));
    assertEquals(Optional.empty(), PlaceIds.taken("A2", List.of("B", "a1")));
  }

  @Test
  void namesTheOneThatIsThere() {
    assertTrue(PlaceIds.takenProblem("A1", "a1").contains("\"a1\" only in capital letters"));
    assertTrue(PlaceIds.takenProblem("A1", "A1").endsWith("is used before"));
  }
}
