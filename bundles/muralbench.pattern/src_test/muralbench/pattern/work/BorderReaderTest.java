// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.model.BandCorner;
import muralbench.model.BandSide;
import muralbench.model.BorderBand;
import muralbench.model.CircleOutline;
import muralbench.model.MotifDrawing;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Opening;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.PathOutline;
import muralbench.model.PatternBook;
import muralbench.model.RectangleOutline;
import muralbench.setout.MuralReader;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.SetOut;
import muralbench.setout.bond.BondRegistry;
import org.junit.jupiter.api.Test;

class BorderReaderTest {
  private static final double JOINT = 3;

  private static PanelSetOut laid(Mural mural) throws InputException {
    MuralSetOut setOut = SetOut.mural(PatternReader.mural(mural), BondRegistry.standard(), Progress.NONE);
    return setOut.panels().get(0);
  }

  private static List<Piece> border(PanelSetOut panel) {
    return panel.pieces().stream().filter(Piece::inBorder).toList();
  }

  /** Field, border and joints fill the panel: no piece lies on another, and all lie in the panel. */
  private static void checkPieces(PanelSetOut panel) {
    double area = panel.pieces().stream().mapToDouble(Piece::area).sum();
    assertEquals(area, ShapeUnion.area(panel.pieces()), 1e-5 * area, "pieces overlap");
    assertTrue(area < panel.area() && area > 0.8 * panel.area(), area + " of " + panel.area());
    assertEquals(panel.pieces().size(), panel.pieces().stream().map(Piece::key).distinct().count());
  }

  /** 19 tiles of 100 mm with 20 joints of 3 mm between corners of 100 mm: 2160 mm; likewise 13 tiles up: 1542 mm. */
  @Test
  void aBandOfWholeTilesSurroundsTheField() throws Exception {
    PanelSetOut panel = laid(BorderMurals.mural(BorderMurals.rectangle(0, 0, 2160, 1542), BorderMurals.band()));
    assertEquals(2 * 19 + 2 * 13 + 4, border(panel).size());
    assertTrue(border(panel).stream().allMatch(piece -> piece.kind() == PieceKind.WHOLE));
    assertEquals("A-R1-01", border(panel).get(0).key());
    assertEquals(0, border(panel).get(0).box().minX(), 1e-9);
    checkPieces(panel);
    double inner = panel.field().stream().mapToDouble(piece -> piece.box().minX()).min().orElseThrow();
    assertEquals(100 + JOINT, inner, 1e-9);
  }

  @Test
  void theFieldIsBalancedInsideTheBand() throws Exception {
    PanelSetOut panel = laid(BorderMurals.mural(BorderMurals.rectangle(0, 0, 2160, 1542), BorderMurals.band()));
    List<Piece> bottom = panel.field().stream().filter(piece -> piece.course() == 1).toList();
    double left = bottom.get(0).box().width();
    double right = bottom.get(bottom.size() - 1).box().width();
    assertEquals(left, right, 1e-6);
    assertTrue(left >= 75 - 1e-6, "half a tile of 150 mm");
  }

  @Test
  void openingsCutTheBandToo() throws Exception {
    Mural mural = BorderMurals.mural(BorderMurals.rectangle(0, 0, 2160, 1542), BorderMurals.band());
    Opening opening = BorderMurals.opening("A1", 1000, 40, 150, 300);
    mural.getPanels().get(0).getOpenings().add(opening);
    PanelSetOut panel = laid(mural);
    assertTrue(border(panel).stream().anyMatch(piece -> piece.kind() == PieceKind.NOTCHED));
    assertEquals(2160.0 * 1542 - 150 * 300, panel.area(), 1e-6);
    checkPieces(panel);
  }

  @Test
  void aBandThatDoesNotCloseSaysWhatWouldWork() {
    Mural mural = BorderMurals.mural(BorderMurals.rectangle(0, 0, 2131, 1542), BorderMurals.band());
    InputException refused = assertThrows(InputException.class, () -> PatternReader.mural(mural));
    assertEquals("A", refused.place());
    assertTrue(refused.problem().contains("joint") || refused.problem().contains("moved"), refused.problem());
  }

  @Test
  void mitredCornersAreCutOnTheDiagonal() throws Exception {
    BorderBand band = BorderMurals.band();
    band.setCorner(BandCorner.MITRED);
    band.setJointLeast(1.5);
    band.setJointMost(6);
    band.setMoveIn(60);
    PanelSetOut panel = laid(BorderMurals.mural(BorderMurals.rectangle(0, 0, 2160, 1542), band));
    assertEquals(8, border(panel).stream().filter(piece -> piece.kind() == PieceKind.TRIMMED).count());
    checkPieces(panel);
  }

  @Test
  void singleSidesLeaveTheOthersToTheField() throws Exception {
    BorderBand band = BorderMurals.band();
    band.getSides().addAll(List.of(BandSide.BOTTOM, BandSide.TOP));
    band.setJointMost(6);
    PanelSetOut panel = laid(BorderMurals.mural(BorderMurals.rectangle(0, 0, 2160, 1542), band));
    assertEquals(border(panel).size(), border(panel).stream().map(Piece::position).distinct().count());
    assertTrue(panel.field().stream().anyMatch(piece -> piece.box().minX() < 1e-6));
    assertTrue(panel.field().stream().allMatch(piece -> piece.box().minY() > 100));
    checkPieces(panel);
  }

  @Test
  void aRoundFaceHasARingOfWedgesAndAnArchItsLegs() throws Exception {
    BorderBand ring = BorderMurals.band();
    ring.setJointLeast(1);
    ring.setJointMost(8);
    ring.setScale(3);
    CircleOutline circle = MuralFactory.eINSTANCE.createCircleOutline();
    circle.setCentreX(1000);
    circle.setCentreY(1000);
    circle.setRadius(800);
    PanelSetOut face = laid(BorderMurals.mural(circle, ring));
    assertTrue(border(face).stream().allMatch(piece -> piece.kind() == PieceKind.CURVED && piece.uncut()));
    assertFalse(face.concentric(), "the field is no ring");
    checkPieces(face);
    PathOutline path = MuralFactory.eINSTANCE.createPathOutline();
    path.setData("M 0 0 L 1600 0 L 1600 1000 A 800 800 0 0 1 0 1000 Z");
    BorderBand arch = BorderMurals.band();
    arch.setJointLeast(1);
    arch.setJointMost(8);
    arch.setScale(3);
    arch.setEndShare(0.3);
    checkPieces(laid(BorderMurals.mural(path, arch)));
  }

  @Test
  void aMirroredRepeatHasTheMirrorImageOfTheBandNumberedClockwiseAgain() throws Exception {
    Mural mural = BorderMurals.mural(BorderMurals.rectangle(0, 0, 2160, 1542), BorderMurals.band());
    Panel copy = BorderMurals.repeat(mural, "B", 3000, true);
    mural.getPanels().add(copy);
    MuralSetOut setOut = SetOut.mural(PatternReader.mural(mural), BondRegistry.standard(), Progress.NONE);
    PanelSetOut other = setOut.panels().get(1);
    assertEquals(setOut.panels().get(0).pieces().size(), other.pieces().size());
    Piece first = border(other).get(0);
    assertEquals("B-R1-01", first.key());
    assertEquals(3000, first.box().minX(), 1e-6);
    assertEquals(0, first.box().minY(), 1e-6);
    assertTrue(border(other).get(1).box().minY() > first.box().minY(), "up the left side");
    checkPieces(other);
  }

  @Test
  void whatIsPaintedFollowsTheSequenceRoundTheBand() throws Exception {
    Mural mural = BorderMurals.mural(BorderMurals.rectangle(0, 0, 2057, 1439), BorderMurals.band("reed", "knot"));
    PanelSpec plain = MuralReader.panel(mural.getPanels().get(0));
    LaidBorder laid = BorderReader.border(mural.getPanels().get(0), plain).orElseThrow();
    assertEquals(laid.band().tiles().size(), laid.painted().size());
    assertEquals(List.of("", "reed", "knot", "reed"),
        laid.painted().stream().map(LaidBorder.Painted::motif).limit(4).collect(Collectors.toList()));
    assertEquals(1, laid.painted().get(1).turn().quarters(), "turned for the left side");
  }

  @Test
  void aDrawingOfAnotherShapeThanItsTileIsRefused() {
    Mural mural = BorderMurals.mural(BorderMurals.rectangle(0, 0, 2160, 1542), BorderMurals.band("reed"));
    MotifDrawing reed = ((PatternBook) mural.getBooks().get(0)).getMotifs().get(0);
    reed.setTileWidth(2);
    InputException refused = assertThrows(InputException.class, () -> PatternReader.mural(mural));
    assertTrue(refused.problem().contains("shape"), refused.problem());
  }

  @Test
  void aSlantingPanelAndAMissingMotifAreRefusedByName() {
    Outline slant = BorderMurals.polygon(0, 0, 2000, 0, 2000, 1500, 0, 1400);
    assertTrue(assertThrows(InputException.class,
        () -> PatternReader.mural(BorderMurals.mural(slant, BorderMurals.band()))).problem().contains("slanting"));
    RectangleOutline box = BorderMurals.rectangle(0, 0, 2160, 1542);
    assertTrue(assertThrows(InputException.class,
        () -> PatternReader.mural(BorderMurals.mural(box, BorderMurals.band("fern")))).problem().contains("fern"));
  }
}
