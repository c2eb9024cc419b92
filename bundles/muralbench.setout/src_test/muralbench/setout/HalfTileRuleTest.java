// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Opposite cuts equal and none under half a tile: ANSI A108.02 §4.3.1 and §4.3.2 as quoted by the Ceramic Tile Education
 * Foundation; numbers worked with c(n) = (S - n a - (n + 1) j) / 2.
 */
class HalfTileRuleTest {
  @ParameterizedTest
  @CsvSource({"100, 6, 0.125, 15, 4.0", "96, 6, 0.125, 14, 5.0625", "72, 6, 0.125, 10, 5.3125",
      "120, 6, 0.125, 18, 4.8125", "49, 6, 0.125, 7, 3.0",
      // The Foundation's own example, without joints.
      "25.5, 24, 0, 0, 12.75",
      // 2400 mm and 3000 mm with 150 mm tiles and 3 mm joints.
      "94.488188976377952, 5.905511811023622, 0.11811023622047244, 14, 5.019685039370079",
      "118.11023622047244, 5.905511811023622, 0.11811023622047244, 18, 4.783464566929134"})
  void cutsAtBothEndsAreEqualAndAtLeastHalfATile(double span, double tile, double joint, int full, double cut)
      throws Exception {
    PanelSetOut panel = Walls.rectangle(0, 0, span, tile).tiles(tile, tile, joint).setOut();

    List<Piece> pieces = panel.pieces();
    assertEquals(full + 2, pieces.size());
    assertEquals(full, panel.whole());
    assertEquals(cut * Walls.IN, pieces.get(0).box().width(), 0.001);
    assertEquals(cut * Walls.IN, pieces.get(pieces.size() - 1).box().width(), 0.001);
  }

  @Test
  void aSpanOfWholeTilesIsNotCut() throws Exception {
    PanelSetOut panel = Walls.rectangle(3, 5, 48.875, 12.125).setOut();

    assertEquals(16, panel.whole());
    assertEquals(0, panel.cut());
    assertEquals(3 * Walls.IN, panel.origin().x(), 1e-6);
  }

  @Test
  void everyCourseOfARunningBondIsBalanced() throws Exception {
    PanelSetOut panel = Walls.rectangle(0, 36, 72, 48).bond("running", 0.5, 0).setOut();

    for (int course = 1; course <= panel.courses(); course++) {
      int number = course;
      List<Piece> row = panel.pieces().stream().filter(piece -> piece.course() == number).toList();
      double left = row.get(0).box().width();
      assertEquals(left, row.get(row.size() - 1).box().width(), 0.001);
    }
  }

  @Test
  void whereHalfATileIsImpossibleTheSmallestCutIsAsWideAsCanBe() throws Exception {
    // Seven whole tiles leave 2.95 in at either end; eight whole tiles would leave a gap, which nobody asked for.
    PanelSetOut panel = Walls.rectangle(0, 0, 48.9, 6).setOut();

    assertEquals(2.95 * Walls.IN, panel.pieces().get(0).box().width(), 0.001);
    assertEquals(9, panel.pieces().size());
  }

  @Test
  void aThirdOffsetHasNoCutUnderTheBestThatAFineGridOfStartsFinds() throws Exception {
    Walls wall = Walls.rectangle(0, 0, 70, 36).bond("running", 1.0 / 3, 0);
    double chosen = smallestWidth(wall.setOut());

    for (double x = -6; x < 0.2; x += 0.05) {
      PanelSetOut tried = wall.from(x, 0).setOut();
      assertTrue(hasGap(tried) || smallestWidth(tried) <= chosen + 0.001, "a start at " + x + " in is better");
    }
  }

  @Test
  void aDoorJambGetsNoStripUnderHalfATileWhereTheEndsAllowIt() throws Exception {
    // 10 ft 4 in with a door from 4 ft to 7 ft: equal ends leave 1-1/4 in at the left jamb, so the ends give way.
    PanelSetOut panel = Walls.rectangle(0, 0, 124, 86).opening(48, 0, 36, 80).setOut();

    double jamb = panel.pieces().stream().filter(piece -> Math.abs(piece.box().maxX() - 48 * Walls.IN) < 0.001)
        .mapToDouble(piece -> piece.box().width()).min().orElseThrow();
    double ends = panel.pieces().stream().filter(piece -> piece.box().minX() < 0.001
        || piece.box().maxX() > 124 * Walls.IN - 0.001).mapToDouble(piece -> piece.box().width()).min().orElseThrow();
    assertTrue(Math.min(jamb, ends) > 2 * Walls.IN, jamb + ", " + ends);
  }

  @Test
  void anOutletDoesNotUpsetTheEnds() throws Exception {
    PanelSetOut panel = Walls.rectangle(0, 36, 72, 48).opening(20, 42, 2.25, 3.5).setOut();

    assertEquals(5.3125 * Walls.IN, panel.pieces().get(0).box().width(), 0.001);
    assertEquals(5.5625 * Walls.IN, panel.pieces().get(0).box().height(), 0.001);
  }

  @Test
  void manyOffsetCoursesGetTheWidestSmallestCutThatAFineSearchFinds() throws Exception {
    // 1000 mm with 120 x 60 mm tiles, joint 3 mm, offset 0.37: the best of 0.1 mm steps is 13.26 mm.
    PanelSetOut panel = Walls.rectangle(0, 0, 1000 / 25.4, 816 / 25.4).tiles(120 / 25.4, 60 / 25.4, 3 / 25.4)
        .bond("running", 0.37, 0).setOut();

    assertTrue(smallestWidth(panel) > 13.2, smallestWidth(panel) + " mm");
  }

  private static double smallestWidth(PanelSetOut panel) {
    return panel.pieces().stream().mapToDouble(piece -> piece.box().width()).min().orElseThrow();
  }

  private static boolean hasGap(PanelSetOut panel) {
    for (int course = 1; course <= panel.courses(); course++) {
      int number = course;
      List<Piece> row = panel.pieces().stream().filter(piece -> piece.course() == number).toList();
      if (row.get(0).box().minX() > 0.001 || row.get(row.size() - 1).box().maxX() < 70 * Walls.IN - 0.001) {
        return true;
      }
    }
    return false;
  }
}
