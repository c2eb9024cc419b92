// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.setout.BondSpec;
import muralbench.setout.FaceSide;
import muralbench.setout.MakingSpec;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tiles of 100 by 100 with a joint of 2, one of them at the origin. */
class MadeUpTest {
  private static final Set<FaceSide> NO_SIDES = Set.of();

  private static PanelSetOut panel(Contour outline, MakingSpec making, OpeningSpec... openings) throws InputException {
    PanelSpec spec = new PanelSpec("A", "", "wall", "fixed", new TileSpec("T", 100, 100, 0, 0, -1), 2, 0, outline,
        List.of(openings), BondSpec.grid(), new OriginSpec.At(Vec.ZERO));
    return SetOut.panel(spec.withMaking(making), BondRegistry.standard(), Progress.NONE);
  }

  /** Three courses: cuts of a width on the left and on the right, a whole tile in the middle. */
  private static PanelSetOut sides(double cut, MakingSpec making) throws InputException {
    return panel(Contour.rectangle(100 - cut, 0, 2 * cut + 104, 304), making);
  }

  /** 49 + 2 + 49 = 100, to the last digit. */
  @ParameterizedTest
  @CsvSource({"49, 2, 6", "49, 2.1, 9", "49.5, 2, 9", "50, 0, 6", "30, 40, 6", "24, 2, 6", "60, 2, 9"})
  void twoCutsComeFromOneTileIfTheSawLeavesThemRoom(double cut, double kerf, int tiles) throws InputException {
    PanelSetOut panel = sides(cut, MakingSpec.afterCutting(kerf));
    assertEquals(tiles, MadeUp.of(panel).tiles().size());
    assertEquals(tiles, panel.tilesToOrder());
  }

  /** Of 24 there are four in a tile if only the ends need factory edges: 4 x 24 + 3 x 1 = 99. */
  @ParameterizedTest
  @CsvSource({"24, 1, 5", "24, 2, 5", "25, 1, 5"})
  void sawnEdgesMayLieAnywhereWhereThatIsChosen(double cut, double kerf, int tiles) throws InputException {
    assertEquals(tiles, sides(cut, new MakingSpec(true, kerf, NO_SIDES)).tilesToOrder());
    assertEquals(tiles, sides(cut, new MakingSpec(true, kerf, Set.of(FaceSide.TOP, FaceSide.BOTTOM))).tilesToOrder());
    assertEquals(6, sides(cut, new MakingSpec(true, kerf, Set.of(FaceSide.LEFT, FaceSide.RIGHT))).tilesToOrder());
  }

  @Test
  void paintedBeforeCuttingEveryPlaceTakesATile() throws InputException {
    PanelSetOut panel = sides(49, MakingSpec.beforeCutting());
    assertEquals(9, panel.tilesToOrder());
    assertEquals(9, MadeUp.of(panel).tiles().size());
  }

  @Test
  void theLeastIsByArea() throws InputException {
    assertEquals(Map.of("T", 6), MadeUp.of(sides(49, MakingSpec.afterCutting(2))).least());
    assertEquals(Map.of("T", 9), MadeUp.of(sides(51, MakingSpec.afterCutting(2))).least());
    assertEquals(Map.of("T", 5), MadeUp.of(sides(24, MakingSpec.beforeCutting())).least());
  }

  /** Below two pieces 40 high, which share a tile unless one is pierced; above two 78 high. */
  @Test
  void aPiercedPieceHasATileOfItsOwn() throws InputException {
    Contour outline = Contour.rectangle(0, 60, 202, 120);
    PanelSetOut panel = panel(outline, MakingSpec.afterCutting(2),
        new OpeningSpec("A1", "pipe", Contour.circle(new Vec(50, 80), 10)));
    assertEquals(4, panel.tilesToOrder());
    assertEquals(3, panel(outline, MakingSpec.afterCutting(2)).tilesToOrder());
  }

  /** A slot that runs aslant leaves two pieces whose rectangles do not fit on one tile, but they come from one as laid. */
  @Test
  void whatIsLeftOfOneFaceNeverTakesTwoTiles() throws InputException {
    Contour slot = Contour.polygon(List.of(Vec.ZERO, new Vec(8, 0), new Vec(100, 92), new Vec(100, 100),
        new Vec(92, 100), new Vec(0, 8)));
    PanelSetOut panel = panel(Contour.rectangle(0, 0, 100, 100), MakingSpec.afterCutting(2),
        new OpeningSpec("A1", "slot", slot));
    List<MadeTile> tiles = MadeUp.of(panel).tiles();
    assertEquals(List.of(1, 2), List.of(tiles.size(), tiles.get(0).pieces().size()));
    assertEquals(true, tiles.get(0).asLaid());
  }

  @Test
  void hexagonsAreNotSawnApart() throws InputException {
    PanelSpec spec = new PanelSpec("A", "", "wall", "fixed", new TileSpec("H", 100, 115.47, 0, 0, -1), 2, 0,
        Contour.rectangle(0, 0, 500, 400), List.of(), new BondSpec("hexagon", 0, 0, Map.of()),
        new OriginSpec.At(Vec.ZERO));
    PanelSetOut before = SetOut.panel(spec, BondRegistry.standard(), Progress.NONE);
    PanelSetOut after = SetOut.panel(spec.withMaking(MakingSpec.afterCutting(2)), BondRegistry.standard(),
        Progress.NONE);
    assertEquals(before.tilesToOrder(), after.tilesToOrder());
  }
}
