// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import muralbench.base.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      35   | 5    | 10 | 5  | 127 mm past the right edge of panel A
      -1   | 5    | 10 | 5  | 25.5 mm past the left edge of panel A
      5    | -0.5 | 10 | 5  | 12.5 mm past the bottom edge of panel A
      35   | 29   | 10 | 5  | 127 mm past the right edge and 101.5 mm past the top edge of panel A
      35   | 5    | 5.005 | 5 | less than 0.5 mm past the right edge of panel A
      """)
  void anOpeningOutsideIsToldByHowMuchAndWhere(double x, double y, double width, double height, String said) {
    String problem = refused(Walls.rectangle(0, 0, 40, 30).opening(x, y, width, height)).problem();
    assertEquals("the opening reaches " + said, problem);
  }

  /** A corner in the box around a circle of radius 20 in but outside it: 25 - 20 = 5 in, by 3-4-5 triangles. */
  @Test
  void anOpeningOutsideACurveIsToldThePlaceThatIsFarthestOut() {
    String problem = refused(Walls.circle(0, 0, 20).opening(10, 10, 5, 10)).problem();
    assertEquals("the opening reaches up to 127 mm outside panel A, near x = 381 mm, y = 508 mm", problem);
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
  void anOffsetOfMoreThanAModuleIsRefused() {
    assertEquals("A", refused(Walls.rectangle(0, 0, 40, 30).bond("grid", 1.01, 0)).place());
    assertEquals("A", refused(Walls.rectangle(0, 0, 40, 30).bond("grid", Double.NaN, 0)).place());
    assertEquals("A", refused(Walls.rectangle(0, 0, 40, 30).bond("running", 0, 0)).place());
  }

  private static InputException refused(Walls wall) {
    return assertThrows(InputException.class, wall::setOut);
  }
}
