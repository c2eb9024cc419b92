// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Round faces 60 in across on a square grid: a trade case (common practice, no source). The counts were made by exact
 * integration and confirmed by sampling the boundary of each tile.
 */
class RoundFaceTest {
  @ParameterizedTest
  @CsvSource({"6, 0, 0, 52, 36", "6, 1, 1, 57, 40", "6, 0, 1, 56, 38", "4, 0, 0, 148, 52", "4, 1, 1, 137, 56",
      "4, 0, 1, 138, 58", "4.25, 0, 0, 120, 52", "4.25, 1, 1, 121, 56", "4.25, 0, 1, 124, 54", "8, 0, 0, 32, 28",
      "8, 1, 1, 29, 32", "8, 0, 1, 30, 30", "12, 0, 0, 12, 20", "12, 1, 1, 9, 16", "12, 0, 1, 8, 18"})
  void wholeAndCutTilesAreCountedWithoutTolerance(double tile, int tileOnX, int tileOnY, int whole, int cut)
      throws Exception {
    double onJoint = 0.0625;
    PanelSetOut panel = Walls.circle(0, 0, 30).tiles(tile, tile, 0.125)
        .from(tileOnX == 1 ? -tile / 2 : onJoint, tileOnY == 1 ? -tile / 2 : onJoint).setOut();

    assertEquals(whole, panel.whole());
    assertEquals(cut, panel.cut());
  }

  @Test
  void ceramicAreaIsExact() throws Exception {
    double squareInch = Walls.IN * Walls.IN;
    PanelSetOut panel = Walls.circle(40, 60, 30).from(40.0625, 60.0625).setOut();

    double ceramic = panel.pieces().stream().mapToDouble(Piece::area).sum() / squareInch;
    assertEquals(2715.73, ceramic, 0.005);
    assertEquals(Math.PI * 900, panel.area() / squareInch, 1e-9);
  }

  @Test
  void aBalancedFaceHasAJointOnEachAxis() throws Exception {
    assertEquals(88, Walls.circle(0, 48, 30).setOut().pieces().size());
  }

  @Test
  void cutEdgesAreArcsOfTheFaceAndEndOnIt() throws Exception {
    PanelSetOut panel = Walls.circle(0, 0, 30).setOut();

    for (Piece piece : panel.pieces()) {
      if (piece.kind() == PieceKind.CURVED) {
        Arc arc = (Arc) piece.outline().segments().stream().filter(side -> !side.straight()).findFirst().orElseThrow();
        assertEquals(30 * Walls.IN, arc.rx(), 1e-9);
        assertEquals(30 * Walls.IN, arc.start().length(), 1e-6);
        assertTrue(arc.sweep() > 0);
      }
    }
  }

  @Test
  void aRoundOpeningInsideATilePiercesIt() throws Exception {
    Contour pipe = Contour.circle(new Vec(3 * Walls.IN, 3 * Walls.IN), Walls.IN);
    PanelSetOut panel = Walls.rectangle(0, 0, 12.125, 12.125).opening(pipe).setOut();

    Piece pierced = panel.pieces().get(0);
    assertEquals(PieceKind.PIERCED, pierced.kind());
    assertEquals((36 - Math.PI) * Walls.IN * Walls.IN, pierced.area(), 1e-6);
    assertEquals(1, pierced.holes().get(0).segments().size());
  }
}
