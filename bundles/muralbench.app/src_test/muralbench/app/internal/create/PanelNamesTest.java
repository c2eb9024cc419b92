// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PanelNamesTest {
  @Test
  void theFirstLetterThatIsFreeIsTaken() {
    assertEquals("A", PanelNames.free(List.of()));
    assertEquals("B", PanelNames.free(List.of(panel("a"), panel("C"))));
  }

  @Test
  void twoLettersFollowTheAlphabet() {
    List<PanelDraft> panels = new ArrayList<>();
    for (int i = 0; i < 26; i++) {
      panels.add(panel(PanelNames.free(panels)));
    }
    assertEquals("Z", panels.get(25).id());
    assertEquals("AA", PanelNames.free(panels));
  }

  private static PanelDraft panel(String id) {
    return new PanelDraft(id, "", 0, 0, 1, 1);
  }
}
