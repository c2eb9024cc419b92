// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.export.SampleMural;
import muralbench.setout.BondSpec;
import muralbench.setout.MakingSpec;
import muralbench.setout.MuralSetOut;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.SetOut;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.cut.CutGroup.Placing;
import muralbench.setout.cut.CutList;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

class CutTablesTest {
  private final MuralSetOut mural = SampleMural.inches();

  @Test
  void thereIsOneRowForEachShape() {
    // Worked by hand from the sample: 100 mm is 3.937 in, nearest sixteenth 3-15/16; 15 240 mm2 are 23.62 sq in. The
    // piece is drawn as it hangs.
    assertEquals(List.of(2, "trimmed", "T6", 3, "3-15/16 in", "6 in", 3.9375, 6.0, "in", 23.62, "sq in",
        "A-01-04 A-02-04 A-03-04", "0: A-01-04 A-02-04 A-03-04"), tables(mural).cuts().rows().get(1));
    assertEquals(4, tables(mural).cuts().rows().size());
  }

  @Test
  void millimetresAreRoundedToHalves() {
    List<Object> row = tables(SampleMural.of(LengthUnit.MILLIMETRE, SampleMural.panel("A"))).cuts().rows().get(1);
    assertEquals(List.of("100 mm", "152.5 mm", 100.0, 152.5, "mm", 15240.0, "mm2"), row.subList(4, 11));
  }

  @Test
  void everyPieceHasARowWithTheNumberOfItsCut() {
    List<List<Object>> rows = tables(mural).pieces().rows();
    assertEquals(12, rows.size());
    assertEquals(List.of("3-15/16 in", "6 in"), rows.get(3).subList(6, 8), "as it stands on the wall");
    assertEquals(List.of("A-01-01", "A", 1, 1, "whole", "T6", "6 in", "6 in", 6.0, 6.0, "in", "", ""), rows.get(0));
    assertEquals(List.of(2, 0.0), rows.get(3).subList(11, 13));
  }

  @Test
  void theTotalsAreThoseOfTheSetOut() {
    MuralSetOut two = SampleMural.of(LengthUnit.INCH, SampleMural.panel("A"), SampleMural.panel("B"));
    assertEquals(List.of("", "", 24, 12, 12, 24), tables(two).panels().rows().get(2));
    assertEquals(List.of("T6", 24, 24), tables(two).tiles().rows().get(0));
  }

  @Test
  void everyCutPieceNamesTheTurnOfItsTile() {
    CutGroup drawn = CutList.of(mural).get(1);
    CutGroup turned = new CutGroup(7, drawn.kind(), drawn.tile(), drawn.area(), drawn.face(), drawn.outline(),
        List.of(), List.of(new Placing("A-01-04", 0), new Placing("A-02-04", 22.5), new Placing("A-03-04", 0)));
    CutTables tables = new CutTables(mural, List.of(turned));
    assertEquals("0: A-01-04 A-03-04; 22.5: A-02-04", tables.cuts().rows().get(0).get(12));
    assertEquals(List.of(7, 22.5), tables.pieces().rows().get(7).subList(11, 13));
    assertEquals(List.of("", ""), tables.pieces().rows().get(0).subList(11, 13));
  }

  /**
   * A column of tiles of 6 in between cuts of 2-31/32 in on both sides, painted after cutting: with a kerf of 1/16 in
   * two cuts are just a tile.
   */
  static MuralSetOut halves() throws InputException {
    double cut = 2.96875 * 25.4;
    PanelSetOut sample = SampleMural.panel("A");
    PanelSpec spec = new PanelSpec("A", "", "wall", "fixed", sample.spec().tile(), 3.175, 0,
        Contour.rectangle(-cut - 3.175, 0, 2 * cut + 152.4 + 2 * 3.175, 2 * 152.4 + 3.175), List.of(), BondSpec.grid(),
        new OriginSpec.At(Vec.ZERO));
    return SampleMural.of(LengthUnit.INCH, SetOut.panel(spec.withMaking(MakingSpec.afterCutting(1.5875)),
        BondRegistry.standard(), Progress.NONE));
  }

  @Test
  void piecesThatShareATileAreListedTogether() throws InputException {
    List<List<Object>> rows = tables(halves()).madeUp().rows();
    assertEquals(List.of(1, 1, 2, 2), rows.stream().map(row -> row.get(0)).toList());
    assertEquals(List.of("A-01-01", "A-01-03", "A-02-01", "A-02-03"),
        rows.stream().map(row -> row.get(5)).sorted().toList());
    assertEquals(List.of(6.0, 6.0), rows.stream().limit(2).map(row -> row.get(14)).toList());
    assertEquals(List.of(), tables(mural).madeUp().rows());
  }

  /** The board of the panel is as large as its outline, 12-3/16 by 12-1/8 in, and hangs from two points. */
  @Test
  void removablePanelsAreListedWithTheirBoards() throws InputException {
    PanelSpec fixed = halves().panels().get(0).spec();
    PanelSpec removable = new PanelSpec("A", "", "wall", "removable", fixed.tile(), fixed.joint(), 0, fixed.outline(),
        List.of(), fixed.bond(), fixed.origin());
    List<Object> row = new BoardTable(SampleMural.of(LengthUnit.INCH, SetOut.panel(removable, BondRegistry.standard(),
        Progress.NONE))).table().rows().get(0);
    assertEquals(List.of("A", "12-3/16 in", "12-1/8 in"), row.subList(0, 3));
    assertEquals(List.of(2, "10-1/8 in", "3-1/16 in, 9-1/8 in"), row.subList(7, 10));
    assertEquals(List.of(), new BoardTable(mural).table().rows());
  }

  @Test
  void theOrderFollowsTheMakingUp() throws InputException {
    assertEquals(List.of("", "", 6, 2, 4, 4), tables(halves()).panels().rows().get(1));
    assertEquals(List.of("T6", 6, 4), tables(halves()).tiles().rows().get(0));
    assertEquals(List.of("T6", 4, 4, "10", 1, 5, "", ""), tables(halves()).order().rows().get(0));
  }

  @Test
  void otherPartsOfABondAreCountedForThemselves() {
    PanelSetOut panel = SampleMural.panel("A");
    List<Piece> pieces = panel.pieces().stream().map(p -> p.course() > 1 ? p : new Piece(p.key(), p.course(),
        p.position(), p.kind(), "T6 dot", p.area(), p.outline(), p.holes(), p.cell(), p.placed())).toList();
    MuralSetOut dotted = SampleMural.of(LengthUnit.INCH, new PanelSetOut(panel.spec(), panel.origin(), panel.area(),
        panel.tiled(), pieces));
    assertEquals(List.of(List.of("T6", 8, 8), List.of("T6 dot", 4, 4)), tables(dotted).tiles().rows());
  }

  private static CutTables tables(MuralSetOut setOut) {
    return new CutTables(setOut, CutList.of(setOut));
  }
}
