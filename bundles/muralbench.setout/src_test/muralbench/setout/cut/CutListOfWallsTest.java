// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;

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

  /**
   * The tile of every piece, taken from the wall and turned by the turn it is given, lies on the drawn face, and the
   * piece on the drawn piece, to 0.01 mm. The turning is done here by the formula for turned coordinates.
   */
  @ParameterizedTest
  @CsvSource({"grid, 6, 0, ''", "grid, 6, 30, ''", "grid, 6, -61.7, ''", "running, 4, 0, ''", "running, 4, 12.5, ''",
      "herringbone, 3, 0, ''", "herringbone, 3, 0, 45", "diagonal, 6, 0, 45", "diagonal, 4, 0, 30", "hexagon, 6, 0, ''",
      "hexagon, 6, 10, ''", "octagon, 6, 0, ''", "octagon, 6, 33, ''"})
  void theTurnLaysEveryTileAsDrawn(String kind, double height, double rotation, String angle) throws InputException {
    BondSpec bond = new BondSpec(kind, kind.equals("running") ? 0.5 : 0, rotation,
        angle.isEmpty() ? Map.of() : Map.of("angle", angle));
    TileSpec tile = new TileSpec("T", 6 * IN, height * IN, 0, 0, -1);
    Contour outlet = Contour.rectangle(490, 1490, 57, 89);
    for (Contour outline : List.of(Contour.circle(new Vec(500, 1600), 24 * IN),
        Contour.rectangle(0, 900, 1000, 1300))) {
      MuralSetOut wall = setOut(tile, bond, outline, new OpeningSpec("A1", "outlet", outlet));
      List<CutGroup> groups = CutList.of(wall);
      assertListsEveryCutOnce(wall, groups);
      assertLaysEveryTileAsDrawn(wall, groups);
      assertTrue(groups.stream().allMatch(group -> group.placings().get(0).turn() <= 45
          || group.placings().get(0).turn() > 315), "the first hangs upright or nearly");
    }
  }

  /** Wedges that the panel leaves whole and wedges it cuts. */
  @Test
  void theTurnLaysEveryWedgeAsDrawn() throws InputException {
    BondSpec rings = new BondSpec("rings", 0, 0, Map.of("radius", "24 in", "rings", "5.75 in, 5.75 in"));
    MuralSetOut wall = setOut(SIX, rings, Contour.rectangle(-24 * IN, 900, 48 * IN, 40 * IN));
    List<CutGroup> groups = CutList.of(wall);
    assertLaysEveryTileAsDrawn(wall, groups);
    assertTrue(groups.stream().filter(group -> group.tile().contains("ring")).allMatch(CutGroup::fitsOneWay));
    assertTrue(groups.stream().anyMatch(group -> group.lots().size() > 10));
  }

  private static void assertLaysEveryTileAsDrawn(MuralSetOut setOut, List<CutGroup> groups) {
    Map<String, Piece> pieces = setOut.panels().get(0).pieces().stream()
        .collect(Collectors.toMap(Piece::key, piece -> piece));
    for (CutGroup group : groups) {
      for (CutGroup.Placing placing : group.placings()) {
        Piece piece = pieces.get(placing.key());
        List<Vec> face = turned(piece.face(), placing.turn());
        Vec corner = new Vec(face.stream().mapToDouble(Vec::x).min().orElseThrow(),
            face.stream().mapToDouble(Vec::y).min().orElseThrow());
        assertOn(group.face(), face, corner, placing);
        assertOn(group.outline(), turned(piece.outline(), placing.turn()), corner, placing);
        assertEquals(group.holes().size(), piece.holes().size());
        piece.holes().forEach(hole -> assertTrue(group.holes().stream().anyMatch(drawn -> isOn(drawn,
            turned(hole, placing.turn()), corner)), placing::toString));
      }
    }
  }

  /** Points of an edge, turned about (0, 0). */
  private static List<Vec> turned(Contour edge, double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    return edge.points(0.001).stream().map(p -> new Vec(cos * p.x() - sin * p.y(), sin * p.x() + cos * p.y())).toList();
  }

  private static void assertOn(Contour drawn, List<Vec> points, Vec corner, CutGroup.Placing placing) {
    assertTrue(isOn(drawn, points, corner), () -> placing + " is not on " + drawn);
  }

  /** Whether points less a corner lie within 0.01 mm of a drawn edge, and the edge's corners near them. */
  private static boolean isOn(Contour drawn, List<Vec> points, Vec corner) {
    GeometryFactory factory = new GeometryFactory();
    LinearRing laid = ring(factory, points, corner);
    LinearRing edge = ring(factory, drawn.points(0.001), Vec.ZERO);
    return DiscreteHausdorffDistance.distance(laid, edge) <= 0.0102;
  }

  private static LinearRing ring(GeometryFactory factory, List<Vec> points, Vec corner) {
    List<Coordinate> ring = new ArrayList<>(points.stream()
        .map(point -> new Coordinate(point.x() - corner.x(), point.y() - corner.y())).toList());
    ring.add(ring.get(0));
    return factory.createLinearRing(ring.toArray(Coordinate[]::new));
  }

  private static double holes(CutGroup group) {
    return group.holes().stream().mapToDouble(Contour::area).sum();
  }
}
