// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.editor.OpenMural;
import muralbench.editor.SampleMural;
import muralbench.setout.OpeningDrag;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

class PieceFieldTest {
  private final OpenMural mural = SampleMural.open();

  private PieceField field(int panel) {
    return new PieceField(mural.setOut(mural.mural().getPanels().get(panel)).orElseThrow());
  }

  @Test
  void everyWholeTileIsFoundAtItsMiddle() {
    PieceField field = field(0);
    for (Piece piece : field.setOut().pieces()) {
      if (piece.kind() == PieceKind.WHOLE) {
        Vec middle = piece.box().centre();
        assertEquals(piece, field.at(middle.x(), middle.y()).orElseThrow());
      }
    }
  }

  @Test
  void jointsAndOpeningsAreNoPieces() {
    PieceField field = field(0);
    Box tile = field.setOut().pieces().stream().filter(piece -> piece.kind() == PieceKind.WHOLE).findFirst()
        .orElseThrow().box();
    assertTrue(field.at(tile.maxX() + 1.5, tile.centre().y()).isEmpty());
    assertTrue(field.at(508 + 28, 1066.8 + 44).isEmpty());
  }

  @Test
  void outsideTheCurveThereIsNothing() {
    PieceField field = field(2);
    Box around = field.setOut().spec().outline().box();
    assertTrue(field.at(around.minX() + 2, around.minY() + 2).isEmpty());
    assertTrue(field.at(around.centre().x() + 5, around.centre().y() + 5).isPresent());
  }

  @Test
  void onlyPiecesInThePartArePassedOn() {
    List<PieceShape> seen = new ArrayList<>();
    field(0).visible(new Box(600, 1300, 700, 1400), seen::add);
    assertTrue(seen.size() >= 1 && seen.size() <= 4, "seen " + seen.size());
  }

  @Test
  void wholeTilesAreUprightAndCurvedOnesAreNot() {
    List<PieceShape> seen = new ArrayList<>();
    field(2).visible(new Box(0, 0, 1e5, 1e5), seen::add);
    assertTrue(seen.stream().allMatch(shape -> shape.upright() == (shape.piece().kind() == PieceKind.WHOLE)
        || shape.piece().kind() == PieceKind.TRIMMED));
  }

  /** Whatever was looked at before, the next field shows what a fresh one shows. */
  @Test
  void aFieldThatFollowsAnotherEqualsAFreshOne() throws InputException {
    PieceField before = field(0);
    before.visible(new Box(0, 0, 9000, 9000), shape -> { });
    OpeningDrag drag = OpeningDrag.of(before.setOut(), "A1", mural.bonds());
    PanelSetOut moved = drag.moved(Contour.rectangle(900, 1200, 200, 200));
    assertEquals(shapes(new PieceField(moved)), shapes(new PieceField(moved, Optional.of(before))));
  }

  private static List<PieceShape> shapes(PieceField field) {
    List<PieceShape> shapes = new ArrayList<>();
    field.visible(new Box(0, 0, 9000, 9000), shapes::add);
    return shapes;
  }
}
