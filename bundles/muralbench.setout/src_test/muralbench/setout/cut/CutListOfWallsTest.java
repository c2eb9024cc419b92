// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.BondSpec;
import muralbench.setout.MuralSetOut;
import muralbench.setout.MuralSpec;
import muralbench.setout.OpeningSpec;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.SetOut;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

/** The cutting list of set-outs as they come from the engine. */
class CutListOfWallsTest {
  private static final double IN = 25.4;
  private static final TileSpec SIX = new TileSpec("T6", 6 * IN, 6 * IN, 0, 0, -1);

  private static MuralSetOut setOut(TileSpec tile, BondSpec bond, Contour outline, OpeningSpec... openings)
      throws InputException {
    PanelSpec panel = new PanelSpec("A", "", "wall", "fixed", tile, IN / 8, 0, outline, List.of(openings), bond,
        new OriginSpec.Balanced());
    MuralSpec mural = new MuralSpec("", "", "", LengthUnit.INCH, "interior-dry", List.of(panel));
    return SetOut.mural(mural, BondRegistry.standard(), Progress.NONE);
  }

  private static Set<String> cutKeys(MuralSetOut setOut) {
    return setOut.panels().get(0).pieces().stream().filter(piece -> piece.kind() != PieceKind.WHOLE).map(Piece::key)
        .collect(Collectors.toSet());
  }

  private static void assertListsEveryCutOnce(MuralSetOut setOut, List<CutGroup> groups) {
    List<String> keys = groups.stream().flatMap(group -> group.keys().stream()).toList();
    assertEquals(cutKeys(setOut).size(), keys.size());
    assertEquals(cutKeys(setOut), Set.copyOf(keys));
  }

  /** A round face set out from its middle comes in quarters: what is cut there is cut four times, and mirrored not. */
  @Test
  void findsTheFourQuartersOfARoundFace() throws InputException {
    MuralSetOut round = setOut(SIX, BondSpec.grid(), Contour.circle(new Vec(500, 1600), 24 * IN));
    List<CutGroup> groups = CutList.of(round);
    assertListsEveryCutOnce(round, groups);
    assertTrue(groups.size() >= 3);
    groups.forEach(group -> assertEquals(4, group.keys().size(), group.keys()::toString));
  }

  /** Whatever start is chosen for a turned bond, it is even both ways, so that half a turn keeps the face. */
  @Test
  void findsThePairsOfATurnedBond() throws InputException {
    MuralSetOut round = setOut(SIX, new BondSpec("grid", 0, 30, Map.of()), Contour.circle(new Vec(500, 1600), 24 * IN));
    List<CutGroup> groups = CutList.of(round);
    assertListsEveryCutOnce(round, groups);
    groups.forEach(group -> assertEquals(0, group.keys().size() % 2, group.keys()::toString));
  }

  @Test
  void gathersTheHalvesAtBothEndsOfARunningBond() throws InputException {
    MuralSetOut wall = setOut(new TileSpec("T", 8 * IN, 4 * IN, 0, 0, -1), new BondSpec("running", 0.5, 0, Map.of()),
        Contour.rectangle(0, 0, (8 * 8.125 - 0.125) * IN, (10 * 4.125 - 0.125) * IN));
    List<CutGroup> groups = CutList.of(wall);
    assertListsEveryCutOnce(wall, groups);
    assertEquals(1, groups.size(), groups::toString);
    assertEquals(3.9375 * 4 * IN * IN, groups.get(0).area(), 1e-6);
  }

  /** The four corner cuts round an opening in the middle are turned copies of one another. */
  @Test
  void putsEveryPieceOnItsFace() throws InputException {
    Contour wall = Contour.rectangle(0, 0, 71 * IN, 47 * IN);
    MuralSetOut setOut = setOut(SIX, BondSpec.grid(), wall, new OpeningSpec("A1", "window",
        Contour.rectangle(25.5 * IN, 13.5 * IN, 20 * IN, 20 * IN)));
    List<CutGroup> groups = CutList.of(setOut);
    assertListsEveryCutOnce(setOut, groups);
    for (CutGroup group : groups) {
      Box face = group.face().box();
      assertEquals(0, Math.hypot(face.minX(), face.minY()), 1e-9);
      assertEquals(6 * IN, face.width(), 1e-9);
      assertTrue(face.grown(1e-6).holds(group.outline().box()));
      assertEquals(group.area(), group.outline().area() - holes(group), 1e-3);
    }
    assertTrue(groups.stream().anyMatch(group -> group.kind() == PieceKind.NOTCHED && group.keys().size() == 4));
  }

  private static double holes(CutGroup group) {
    return group.holes().stream().mapToDouble(Contour::area).sum();
  }
}
