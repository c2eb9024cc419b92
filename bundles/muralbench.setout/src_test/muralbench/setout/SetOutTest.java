// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import muralbench.base.CancelledException;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SetOutTest {
  private static final double SQUARE_INCH = Walls.IN * Walls.IN;

  @Test
  void coursesCountFromTheBottomAndPositionsFromTheLeft() throws Exception {
    PanelSetOut panel = Walls.rectangle(10, 36, 30.5, 18.25).setOut();

    assertEquals("A-01-01", panel.pieces().get(0).key());
    assertEquals("A-01-02", panel.pieces().get(1).key());
    assertEquals("A-03-05", panel.pieces().get(14).key());
    assertTrue(panel.pieces().get(14).box().minY() > panel.pieces().get(0).box().maxY());
  }

  @Test
  void aTradePanelOfSixByEightFeetIsSetOutByTheHalfTileRule() throws Exception {
    // Common practice, no source: 72 in gives 10 whole and two cuts of 5-5/16 in, 96 in gives 14 and two of 5-1/16 in.
    PanelSetOut panel = Walls.rectangle(0, 0, 72, 96).setOut();

    assertEquals(12 * 16, panel.pieces().size());
    assertEquals(10 * 14, panel.whole());
    assertEquals(5.3125 * 5.0625, panel.pieces().get(0).area() / SQUARE_INCH, 1e-9);
  }

  @Test
  void anOpeningNotchesAndTrimsTheTilesAroundIt() throws Exception {
    PanelSetOut panel = Walls.rectangle(0, 0, 24.375, 24.375).opening(5, 5, 4, 8).setOut();

    assertEquals(PieceKind.NOTCHED, piece(panel, "A-01-01").kind());
    assertEquals(36 - 1, piece(panel, "A-01-01").area() / SQUARE_INCH, 1e-9);
    assertEquals(PieceKind.TRIMMED, piece(panel, "A-02-01").kind());
    assertEquals(5 * Walls.IN, piece(panel, "A-02-01").box().width(), 1e-6);
    assertEquals(PieceKind.WHOLE, piece(panel, "A-04-04").kind());
  }

  @Test
  void aTileCutInTwoIsTwoPiecesOfOneTile() throws Exception {
    PanelSetOut panel = Walls.rectangle(0, 0, 18.25, 6).opening(8, 0, 1, 6).from(0, 0).setOut();

    assertEquals(List.of("A-01-01", "A-01-02", "A-01-02b", "A-01-03"),
        panel.pieces().stream().map(Piece::key).toList());
    assertEquals(3, panel.tilesToOrder());
  }

  @Test
  void aCutAcrossACornerKeepsItsStraightSides() throws Exception {
    PanelSetOut panel = Walls.polygon(0, 0, 12.125, 0, 12.125, 9, 9, 12.125, 0, 12.125).from(0, 0).setOut();

    Piece corner = piece(panel, "A-02-02");
    assertEquals(PieceKind.TRIMMED, corner.kind());
    assertEquals(5, corner.outline().segments().size());
    assertEquals(36 - 3.125 * 3.125 / 2, corner.area() / SQUARE_INCH, 1e-9);
  }

  @Test
  void offsetsAccumulateFromCourseToCourse() throws Exception {
    PanelSetOut panel = Walls.rectangle(0, 0, 30, 24.375).bond("grid", 1.0 / 3, 0).from(0, 0).setOut();

    assertEquals(6.125 / 3 * Walls.IN - Walls.IN / 8, piece(panel, "A-02-01").box().maxX(), 1e-6);
    assertEquals(6.125 * 2 / 3 * Walls.IN - Walls.IN / 8, piece(panel, "A-03-01").box().maxX(), 1e-6);
    assertEquals(6 * Walls.IN, piece(panel, "A-04-01").box().maxX(), 1e-6);
  }

  @Test
  void aNegativeOffsetStepsToTheLeft() throws Exception {
    PanelSetOut left = Walls.rectangle(0, 0, 30, 24.375).bond("grid", -1.0 / 3, 0).from(0, 0).setOut();
    PanelSetOut right = Walls.rectangle(0, 0, 30, 24.375).bond("grid", 2.0 / 3, 0).from(0, 0).setOut();

    assertEquals(right.pieces().stream().map(Piece::key).toList(), left.pieces().stream().map(Piece::key).toList());
    assertEquals(piece(right, "A-02-01").box().maxX(), piece(left, "A-02-01").box().maxX(), 1e-6);
  }

  @Test
  void theOriginIsTheLowerLeftCornerOfOneFace() throws Exception {
    PanelSetOut panel = Walls.rectangle(0, 0, 30, 24).from(13, 7).setOut();

    assertEquals(new Vec(13 * Walls.IN, 7 * Walls.IN), panel.origin());
    assertTrue(panel.pieces().stream().anyMatch(piece -> piece.box().minX() == 13 * Walls.IN
        && Math.abs(piece.box().minY() - 7 * Walls.IN) < 1e-9));
  }

  @Test
  void anEdgeGapIsLeftOnlyWhereItIsAskedFor() throws Exception {
    PanelSetOut panel = Walls.rectangle(0, 0, 18.5, 18.5).opening(8, 8, 2, 2).edgeGap(0.125).setOut();

    assertEquals(Walls.IN / 8, panel.pieces().get(0).box().minX(), 1e-6);
    assertEquals(7.875 * Walls.IN, piece(panel, "A-02-02").holes().get(0).box().minX(), 1e-6);
    assertEquals((18.5 * 18.5 - 4) * SQUARE_INCH, panel.area(), 1e-6);
  }

  @Test
  void anEdgeGapKeepsARoundFaceRound() throws Exception {
    PanelSetOut panel = Walls.circle(0, 0, 30).edgeGap(0.125).from(0.0625, 0.0625).setOut();

    assertEquals(1, panel.tiled().get(0).segments().size());
    assertEquals(Math.PI * 29.875 * 29.875, panel.tiled().get(0).area() / SQUARE_INCH, 1e-9);
    // As published for a 1/8 in gap at the rim: the counts of the face without it.
    assertEquals(52, panel.whole());
    assertEquals(36, panel.cut());
  }

  @ParameterizedTest
  @ValueSource(doubles = {90, 180, 270, -90, 360})
  void quarterTurnsStillCountFromBottomLeft(double rotation) throws Exception {
    PanelSetOut panel = Walls.rectangle(5, 36, 40, 30).tiles(6, 3, 0.125).bond("running", 0.5, rotation).setOut();

    Piece first = panel.pieces().get(0);
    assertEquals("A-01-01", first.key());
    assertEquals(5 * Walls.IN, first.box().minX(), 1e-6);
    assertEquals(36 * Walls.IN, first.box().minY(), 1e-6);
  }

  @ParameterizedTest
  @ValueSource(doubles = {15, 45, 137.5, 200})
  void aSkewBondFillsThePanel(double rotation) throws Exception {
    PanelSetOut panel = Walls.rectangle(5, 36, 40, 30).tiles(4, 4, 0).bond("grid", 0, rotation).setOut();

    // Arithmetic dust may be left out at every cut tile.
    assertEquals(panel.area(), panel.pieces().stream().mapToDouble(Piece::area).sum(), panel.cut() * SetOut.DUST_AREA);
    assertEquals(panel.pieces().size(), new HashSet<>(panel.pieces().stream().map(Piece::key).toList()).size());
  }

  @Test
  void anArchedTopIsExact() throws Exception {
    // 1000 mm wide, springing at 1200 mm, half round on top.
    PanelSetOut panel = Walls.path("M0 200 H1000 V1200 A500 500 0 0 1 0 1200 Z").tiles(6, 6, 0).setOut();

    assertEquals(1000 * 1000 + Math.PI * 500 * 500 / 2, panel.area(), 1e-6);
    assertEquals(panel.area(), panel.pieces().stream().mapToDouble(Piece::area).sum(), 1e-2);
  }

  @Test
  void aLargePanelIsRefusedWithTheNumbers() {
    InputException e = assertThrows(InputException.class,
        () -> Walls.rectangle(0, 0, 5000, 5000).tiles(1, 1, 0.1).setOut());

    assertTrue(e.getMessage().contains("5000000"), e.getMessage());
  }

  @Test
  void aPersonCanCancel() {
    Progress impatient = new Progress() {
      @Override
      public void begin(String task, int steps) {}

      @Override
      public void step(int steps) {
        throw new CancelledException();
      }
    };
    PanelSpec panel = Walls.rectangle(0, 0, 300, 300).spec();

    assertThrows(CancelledException.class, () -> SetOut.panel(panel, BondRegistry.standard(), impatient));
  }

  private static Piece piece(PanelSetOut panel, String key) {
    return panel.pieces().stream().filter(piece -> piece.key().equals(key)).findFirst().orElseThrow();
  }
}
