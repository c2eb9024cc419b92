// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.bond.BondRequest;
import muralbench.setout.bond.Cell;
import muralbench.setout.bond.Pattern;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BondsTest {
  @ParameterizedTest
  @CsvSource({"running, 6, 3, 0.125, 0.5, ''", "diagonal, 6, 6, 0.125, 0, ''", "diagonal, 6, 4, 0.125, 0, angle=30",
      "herringbone, 8, 4, 0.125, 0, ''", "herringbone, 9, 3, 0, 0, angle=45", "basket, 8.125, 4, 0.125, 0, ''",
      "hexagon, 6, 6, 0.125, 0, ''", "hexagon, 6, 6, 0.125, 0, point=side", "octagon, 6, 6, 0.125, 0, ''",
      "octagon, 6, 6, 0.125, 0, dot=2 in", "two-size, 4, 4, 0.125, 0, ''", "three-size, 4, 4, 0.125, 0, ''"})
  void ceramicHasTheShareOfAWallThatItHasOfTheRepeat(String bond, double width, double height, double joint, double offset,
      String setting) throws Exception {
    PanelSetOut panel = Walls.rectangle(3, 36, 60, 48).tiles(width, height, joint).bond(bond, offset, 0)
        .setting(setting).opening(20, 50, 9, 11).setOut();

    double ceramic = panel.pieces().stream().mapToDouble(Piece::area).sum();
    Pattern pattern = pattern(bond, Walls.tile(width, height), joint * Walls.IN, offset, setting);
    double share = pattern.repeat().orElseThrow().faces().stream().mapToDouble(Contour::area).sum()
        / pattern.repeat().orElseThrow().area();
    assertEquals(share, ceramic / panel.area(), 0.02);
  }

  /** A wall with upright courses is that with level courses laid on its side, and numbered like all walls. */
  @ParameterizedTest
  @CsvSource({"running, 0.5", "running, -0.3333", "grid, 0", "grid, 0.25"})
  void verticalCoursesAreLevelOnesOnTheirSide(String bond, double offset) throws Exception {
    PanelSetOut vertical = Walls.rectangle(3, 36, 60, 45).tiles(3, 7, 0.125).bond(bond, offset, 0)
        .setting("courses=vertical").opening(20, 50, 9, 11).from(8.01, 41.03).setOut();
    PanelSetOut level = Walls.rectangle(36, 3, 45, 60).tiles(7, 3, 0.125).bond(bond, offset, 0)
        .setting("").opening(50, 20, 11, 9).from(41.03, 8.01).setOut();
    assertEquals(outlines(level, true), outlines(vertical, false));
  }

  /** The boxes of all pieces to 0.1 mm, in order of their places. */
  private static List<String> outlines(PanelSetOut panel, boolean exchanged) {
    return panel.pieces().stream().map(Piece::box).map(box -> exchanged
        ? new Box(box.minY(), box.minX(), box.maxY(), box.maxX()) : box)
        .map(box -> String.format("%.1f %.1f %.1f %.1f", box.minX(), box.minY(), box.maxX(), box.maxY())).sorted().toList();
  }

  /** Four standing courses of three tiles each, the second and fourth half a tile higher. */
  @Test
  void verticalCoursesAreNumberedUpwardsAndToTheRight() throws Exception {
    Pattern pattern = pattern("running", Walls.tile(3, 6), 0, 0.5, "courses=vertical");
    List<Cell> cells = new ArrayList<>();
    pattern.cells(new Box(1, 1, 11 * Walls.IN, 17 * Walls.IN), cells::add);
    Cell second = cells.stream().filter(cell -> cell.course() == 1 && cell.position() == 1).findFirst().orElseThrow();
    assertEquals(3 * Walls.IN, second.face().box().minX(), 1e-9);
    assertEquals(9 * Walls.IN, second.face().box().minY(), 1e-9);
    assertThrows(InputException.class, () -> pattern("running", Walls.tile(3, 6), 0, 0.5, "courses=up"));
  }

  @Test
  void aHexagonMeasuresUpByFormula() throws Exception {
    Contour face = first(pattern("hexagon", Walls.tile(6, 6), 3, 0, "")).face();

    double side = 6 * Walls.IN / Math.sqrt(3);
    face.segments().forEach(edge -> assertEquals(side, edge.length(), 1e-9));
    assertEquals(1.5 * Math.sqrt(3) * side * side, face.area(), 1e-6);
    assertEquals(6 * Walls.IN, face.box().width(), 1e-9);
  }

  @Test
  void aRegularOctagonHasEqualSidesAndItsDotFitsBetweenTheJoints() throws Exception {
    Pattern pattern = pattern("octagon", Walls.tile(6, 6), 0, 0, "");
    List<Contour> faces = pattern.repeat().orElseThrow().faces();

    double side = 6 * Walls.IN * (Math.sqrt(2) - 1);
    faces.get(0).segments().forEach(edge -> assertEquals(side, edge.length(), 1e-9));
    faces.get(1).segments().forEach(edge -> assertEquals(side, edge.length(), 1e-9));
  }

  @ParameterizedTest
  @CsvSource({"6.625, 12.375, 13, 5.802, 3.049, 5.928", "12.5, 18.25, 19, 5.884, 3.992, 5.910",
      "18.375, 24.125, 25, 5.923, 4.482, 5.887", "24.25, 30, 31, 5.946, 4.782, 5.868"})
  void ringsTakeTheFewestWedgesThatComeFromTheTile(double inner, double outer, int count, double outerChord,
      double innerChord, double height) throws Exception {
    // Four rings 5-3/4 in deep with 1/8 in joints on a 60 in face from 6 in blanks; worked by the sector formulas.
    Pattern pattern = pattern("rings", Walls.tile(6, 6), Walls.IN / 8, 0,
        "radius=30 in;rings=5.75 in, 5.75 in, 5.75 in, 5.75 in");
    List<Cell> ring = cells(pattern).stream().filter(cell -> Math.abs(cell.face().segments().get(0).start().length()
        - outer * Walls.IN) < 1e-6).filter(cell -> cell.part().startsWith("ring")).toList();

    assertEquals(count, ring.size());
    List<Segment> sides = ring.get(0).face().segments();
    assertEquals(outerChord, sides.get(0).start().distance(sides.get(0).end()) / Walls.IN, 0.0006);
    assertEquals(innerChord, sides.get(2).start().distance(sides.get(2).end()) / Walls.IN, 0.0006);
    assertEquals(height, ring.get(0).face().box().height() / Walls.IN, 0.0006);
    assertEquals(inner * Walls.IN, sides.get(2).start().length(), 1e-6);
  }

  @Test
  void ringsFillARoundFaceWithTheKeyStoneUp() throws Exception {
    PanelSetOut panel = Walls.circle(40, 60, 30).bond("rings", 0, 0)
        .setting("radius=30 in;rings=5.75 in, 5.75 in, 5.75 in, 5.75 in").setOut();

    assertEquals(89, panel.pieces().size());
    Piece key = panel.pieces().stream().filter(piece -> piece.key().equals("A-05-01")).findFirst().orElseThrow();
    assertEquals(40 * Walls.IN, key.box().centre().x(), 1e-6);
    assertEquals(90 * Walls.IN, key.box().maxY(), 1e-6);
    assertTrue(panel.pieces().stream().allMatch(piece -> piece.kind() == PieceKind.CURVED));
  }

  @Test
  void wedgesCutByTheRimKeepTheirArcs() throws Exception {
    PanelSetOut panel = Walls.rectangle(0, 0, 60, 40).bond("rings", 0, 0)
        .setting("radius=30 in;rings=5.75 in, 5.75 in").setOut();

    double ceramic = panel.pieces().stream().mapToDouble(Piece::area).sum();
    double chords = panel.pieces().stream()
        .mapToDouble(piece -> Contour.polygon(piece.outline().points(0.0001)).area()).sum();
    assertEquals(chords, ceramic, 1);
  }

  @Test
  void aTableThatLeavesAHoleOrOverlapsIsRefused() {
    assertRefused("table", "cells=0 0 2 2;repeat=2 1 / -1 2", "bond.cells");
    assertRefused("table", "cells=0 0 2 2 / 1 1 1 1;repeat=2 1 / -1 2", "bond.cells");
    assertRefused("table", "cells=0 0 2;repeat=2 1 / -1 2", "bond.cells");
    assertRefused("table", "cells=0 0 1 1;repeat=2 1 / 4 2", "bond.repeat");
    assertRefused("table", "", "bond.cells");
  }

  @Test
  void settingsThatCannotBeUsedAreNamed() {
    assertRefused("diagonal", "angle=90", "bond.angle");
    assertRefused("hexagon", "point=left", "bond.point");
    assertRefused("octagon", "dot=6 in", "bond.dot");
    assertRefused("rings", "radius=-3", "bond.radius");
    assertRefused("rings", "radius=30 in;rings=20 in, 20 in", "bond.rings");
    assertRefused("rings", "radius=30 in;rings=5 in;pieces=3000", "bond.pieces");
    assertRefused("herringbone", "", "bond.tile");
    assertRefused("basket", "", "bond.tile");
  }

  private static void assertRefused(String bond, String setting, String place) {
    InputException e = assertThrows(InputException.class, () -> pattern(bond, Walls.tile(6, 6), 3, 0, setting));
    assertEquals(place, e.place(), e.getMessage());
  }

  private static Pattern pattern(String bond, TileSpec tile, double joint, double offset, String setting)
      throws InputException {
    return BondRegistry.standard().find(bond).orElseThrow()
        .lay(new BondRequest(tile, joint, offset, Map.copyOf(Walls.settings(setting))));
  }

  private static List<Cell> cells(Pattern pattern) {
    List<Cell> cells = new ArrayList<>();
    pattern.cells(new Box(-800, -800, 800, 800), cells::add);
    return cells;
  }

  private static Cell first(Pattern pattern) {
    return cells(pattern).get(0);
  }

  @Test
  void everyBondShowsItselfInItsSample() throws Exception {
    for (Bond bond : BondRegistry.standard().all()) {
      int[] cells = {0};
      bond.lay(bond.sample()).cells(new Box(-200, -200, 200, 200), cell -> cells[0]++);
      assertTrue(cells[0] > 4, bond.kind());
    }
  }
}
