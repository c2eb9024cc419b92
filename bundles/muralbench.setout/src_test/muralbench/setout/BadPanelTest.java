// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import muralbench.base.InputException;
import org.junit.jupiter.api.Test;

class BadPanelTest {
  @Test
  void anOutlineThatCrossesItselfIsRefusedWithThePlace() {
    InputException e = refused(Walls.polygon(0, 0, 40, 30, 40, 0, 0, 30));

    assertEquals("A", e.place());
    assertTrue(e.problem().contains("crosses itself near x = 508 mm, y = 381 mm"), e.problem());
  }

  @Test
  void anOpeningThatReachesOutsideItsPanelIsRefused() {
    assertEquals("O1", refused(Walls.rectangle(0, 0, 40, 30).opening(35, 5, 10, 5)).place());
    assertEquals("O1", refused(Walls.rectangle(0, 0, 40, 30).opening(50, 5, 10, 5)).place());
  }

  @Test
  void anOpeningMayTouchTheEdge() throws Exception {
    assertTrue(Walls.rectangle(0, 0, 40, 30).opening(10, 0, 10, 20).setOut().pieces().size() > 0);
  }

  @Test
  void aTileLargerThanThePanelIsRefused() {
    assertTrue(refused(Walls.rectangle(0, 0, 40, 30).tiles(6, 31, 0.125)).problem().contains("larger than the panel"));
  }

  @Test
  void aPanelWithNothingLeftIsRefused() {
    assertTrue(refused(Walls.rectangle(0, 0, 40, 30).opening(0, 0, 40, 30)).problem().contains("nothing is left"));
  }

  @Test
  void anUnknownBondIsRefusedWithTheKnownOnes() {
    assertTrue(refused(Walls.rectangle(0, 0, 40, 30).bond("zigzag", 0, 0)).remedy().contains("grid, running"));
  }

  @Test
  void anOffsetOfAWholeModuleIsRefused() {
    assertEquals("A", refused(Walls.rectangle(0, 0, 40, 30).bond("grid", 1, 0)).place());
    assertEquals("A", refused(Walls.rectangle(0, 0, 40, 30).bond("running", 0, 0)).place());
  }

  private static InputException refused(Walls wall) {
    return assertThrows(InputException.class, wall::setOut);
  }
}
