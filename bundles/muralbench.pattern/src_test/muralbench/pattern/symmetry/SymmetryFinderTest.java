// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is generated with a group has exactly the symmetries of the group's published table, and no others. */
class SymmetryFinderTest {
  /** A lopsided flag near (0.1, 0.06), small enough for the smallest part a group leaves. */
  private static final Patch FLAG = new Patch("red", List.of(Contour.polygon(List.of(new Vec(0.05, 0.03),
      new Vec(0.17, 0.05), new Vec(0.14, 0.08), new Vec(0.1, 0.06), new Vec(0.09, 0.11)))));

  @ParameterizedTest
  @EnumSource
  void aPatternHasExactlyTheSymmetriesOfItsGroup(WallpaperGroup group) {
    Cell cell = group.lattice().cell(1, 1.37);
    FoundSymmetry found = SymmetryFinder.inPlane(cell, placed(group.placements(cell, 1, 1))).orElseThrow();
    assertEquals(group, found.group());
    assertSame(group.placements(cell, 1, 1), found.operations(), found.cell());
  }

  @ParameterizedTest
  @EnumSource
  void aBandHasExactlyTheSymmetriesOfItsGroup(FriezeGroup group) {
    FoundBand found = SymmetryFinder.alongBand(1, placed(group.placements(1, 0.4, 1))).orElseThrow();
    assertEquals(group, found.group());
    assertEquals(1, found.repeat(), 1e-9);
    assertEquals(group.operations().size(), found.operations().size());
    assertSame(group.placements(1, 0.4, 1), found.operations(), Cell.upright(1, 100));
  }

  @ParameterizedTest
  @EnumSource
  void aCellOfSeveralRepeatsChangesNothing(WallpaperGroup group) {
    Cell cell = group.lattice().cell(1, 1.37);
    Cell several = new Cell(cell.a().times(2).plus(cell.b()), cell.b().times(3));
    List<Isometry> placements = group.placements(cell, 2, 3);
    assertEquals(group, SymmetryFinder.inPlane(several, placed(placements)).orElseThrow().group());
  }

  @ParameterizedTest
  @EnumSource
  void threeRepeatsGivenAsOneAreSeenAsThree(FriezeGroup group) {
    FoundBand found = SymmetryFinder.alongBand(3, placed(group.placements(1, 0.4, 3))).orElseThrow();
    assertEquals(1, found.repeat(), 1e-9);
    assertEquals(group, found.group());
  }

  /** Discs on the corners of squares: the square lattice itself, p4m. */
  @Test
  void discsOnASquareGridAreP4m() {
    Patch disc = new Patch("blue", List.of(Contour.circle(new Vec(0.2, 0.7), 0.3)));
    assertEquals(WallpaperGroup.P4M, SymmetryFinder.inPlane(Cell.upright(1, 1), List.of(disc)).orElseThrow().group());
  }

  /** The same discs on a hexagonal lattice given by two upright edges and a second disc: p6m. */
  @Test
  void discsInTheClosestPackingAreP6m() {
    double height = Math.sqrt(3);
    List<Patch> discs = Stream.of(new Vec(0, 0), new Vec(0.5, height / 2))
        .map(centre -> new Patch("blue", List.of(Contour.circle(centre, 0.4)))).toList();
    assertEquals(WallpaperGroup.P6M, SymmetryFinder.inPlane(Cell.upright(1, height), discs).orElseThrow().group());
  }

  /** A half disc keeps one mirror; colours count, so a square of two colours loses its turns. */
  @Test
  void coloursAndArcsCount() {
    Contour half = new Contour(List.of(Arc.circular(new Vec(0.5, 0.5), 0.3, 0, Math.PI),
        new Line(new Vec(0.2, 0.5), new Vec(0.8, 0.5))));
    assertEquals(WallpaperGroup.PM, group(new Patch("red", List.of(half))));
    assertEquals(WallpaperGroup.P4M, group(square("red", 0, 0), square("red", 0.5, 0.5)));
    assertEquals(WallpaperGroup.PMM, group(square("red", 0, 0), square("blue", 0.5, 0)));
  }

  @Test
  void stripesAndPlainFieldsHaveNoRepeat() {
    Patch stripe = new Patch("red", List.of(Contour.rectangle(0, 0, 1, 0.5)));
    assertTrue(SymmetryFinder.inPlane(Cell.upright(1, 1), List.of(stripe)).isEmpty());
    assertTrue(SymmetryFinder.alongBand(1, List.of(stripe)).isEmpty());
  }

  private static Patch square(String colour, double x, double y) {
    return new Patch(colour, List.of(Contour.rectangle(x, y, 0.5, 0.5)));
  }

  private static WallpaperGroup group(Patch... patches) {
    return SymmetryFinder.inPlane(Cell.upright(1, 1), List.of(patches)).orElseThrow().group();
  }

  private static List<Patch> placed(List<Isometry> placements) {
    return placements.stream().map(FLAG::moved).toList();
  }

  /** Every expected movement is found, and every found one is expected, up to shifts by the found cell. */
  private static void assertSame(List<Isometry> expected, List<Isometry> found, Cell cell) {
    for (Isometry one : expected) {
      assertEquals(1, found.stream().filter(other -> same(one, other, cell)).count(), "found instead of " + one);
    }
    for (Isometry one : found) {
      assertTrue(expected.stream().anyMatch(other -> same(one, other, cell)), "no such symmetry: " + one);
    }
  }

  private static boolean same(Isometry one, Isometry other, Cell cell) {
    double matrix = Math.abs(one.xx() - other.xx()) + Math.abs(one.xy() - other.xy())
        + Math.abs(one.yx() - other.yx()) + Math.abs(one.yy() - other.yy());
    Vec off = cell.fractions(one.shift().minus(other.shift()));
    return matrix < 1e-9 && Math.abs(off.x() - Math.rint(off.x())) < 1e-6
        && Math.abs(off.y() - Math.rint(off.y())) < 1e-6;
  }
}
