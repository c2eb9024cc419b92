// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FileNamesTest {
  private final FileNames names = new FileNames();

  @Test
  void keepsAPlainId() {
    assertEquals("panel-A-1.svg", names.name("panel-", "A-1", ".svg"));
  }

  @Test
  void leavesTheFolderToNobody() {
    assertEquals("panel-______etc_x.svg", names.name("panel-", "../..\\etc/x", ".svg"));
  }

  @Test
  void tellsNamesApartWhereCapitalsDoNot() {
    assertEquals("panel-a.svg", names.name("panel-", "a", ".svg"));
    assertEquals("panel-A-2.svg", names.name("panel-", "A", ".svg"));
  }

  @Test
  void keepsLettersOfAllScripts() {
    assertEquals("panel-Küche.svg", names.name("panel-", "Ku\u0308che", ".svg"));
  }

  @Test
  void cutsAnEndlessId() {
    assertEquals(6 + 60 + 4, names.name("panel-", "x".repeat(5000), ".svg").length());
  }
}
