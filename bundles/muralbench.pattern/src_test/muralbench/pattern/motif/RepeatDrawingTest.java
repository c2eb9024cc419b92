// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import muralbench.base.InputException;
import muralbench.pattern.symmetry.Cell;
import muralbench.pattern.symmetry.FriezeGroup;
import muralbench.pattern.symmetry.Isometry;
import muralbench.pattern.symmetry.Lattice;
import muralbench.pattern.symmetry.SymmetryFinder;
import muralbench.pattern.symmetry.WallpaperGroup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Repeats drawn from a part have the group they were drawn with. */
class RepeatDrawingTest {
  private static final String LEAF = "region leaf green M 0.05 0.56 L 0.2 0.58 C 0.22 0.7 0.2 0.8 0.06 0.9 Z";
  private static final String FLAG = "region flag green M 0.05 0.02 L 0.2 0.04 L 0.12 0.04 L 0.11 0.09 Z";

  static Stream<WallpaperGroup> upright() {
    return Stream.of(WallpaperGroup.values()).filter(group -> group.lattice() != Lattice.HEXAGONAL);
  }

  @ParameterizedTest
  @EnumSource
  void aBandHasItsGroup(FriezeGroup group) throws InputException {
    Motif band = RepeatDrawing.band(group, Drawings.tile(LEAF, "line vein M 0.1 0.6 L 0.14 0.7"));
    assertEquals(group, SymmetryFinder.alongBand(1, band.patches(Isometry.NONE)).orElseThrow().group());
    assertEquals(group.operations().size(), band.lines().size());
    assertTrue(band.joins(Edge.RIGHT).contains(Orientation.AS_DRAWN));
  }

  @ParameterizedTest
  @MethodSource("upright")
  void aCellHasItsGroup(WallpaperGroup group) throws InputException {
    Motif cell = RepeatDrawing.cell(group, Drawings.tile(FLAG));
    assertEquals(group, SymmetryFinder.inPlane(Cell.upright(1, 1), cell.patches(Isometry.NONE)).orElseThrow().group());
    double part = Drawings.tile(FLAG).shares().get("green");
    assertEquals(group.operations().size() * part, cell.shares().get("green"), 1e-9);
  }

  /** A repeat on two tiles: footprints need one tile in both hands. */
  @Test
  void footprintsNeedOneTileInBothHands() throws InputException {
    Motif strip = Drawings.read("motif M\ntile 0.5 1\ntiles 2\nground white\n" + LEAF);
    Motif band = RepeatDrawing.band(FriezeGroup.STEP, strip);
    Designs designs = new Designs();
    designs.add(band.tile(0), Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    PaintedTile second = designs.add(band.tile(1), Orientation.AS_DRAWN, Colourway.AS_DRAWN);
    assertEquals(Hand.MIRRORED, second.design().hand());
    assertEquals(1, second.design().family());
  }

  @Test
  void aRegionOnAMirrorCountsOnce() throws InputException {
    Motif disc = Drawings.tile("region disc red M 0.8 0.5 A 0.3 0.3 0 0 1 0.2 0.5 A 0.3 0.3 0 0 1 0.8 0.5 Z");
    assertEquals(1, RepeatDrawing.band(FriezeGroup.SPINNING_JUMP, disc).regions().size());
    assertEquals(1, RepeatDrawing.cell(WallpaperGroup.P4M, disc).regions().size());
  }

  @Test
  void aPartThatMeetsItsCopyIsRefusedByName() {
    Motif wide = Drawings.tile("region leaf red M 0.1 0.4 L 0.45 0.45 L 0.2 0.7 Z");
    InputException refusal = assertThrows(InputException.class, () -> RepeatDrawing.band(FriezeGroup.JUMP, wide));
    assertTrue(refusal.getMessage().contains("leaf and leaf overlap"), refusal.getMessage());
    assertTrue(refusal.getMessage().contains("only the part that p11m repeats"), refusal.getMessage());
  }

  @Test
  void aCellThatIsNoSquareTakesNoQuarterTurns() {
    Motif lying = Drawings.read("motif M\ntile 2 1\nground white");
    assertThrows(InputException.class, () -> RepeatDrawing.cell(WallpaperGroup.P4, lying));
    assertThrows(InputException.class, () -> RepeatDrawing.cell(WallpaperGroup.P6, Drawings.tile()));
  }
}
