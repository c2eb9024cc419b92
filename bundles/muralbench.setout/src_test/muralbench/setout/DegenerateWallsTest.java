// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import muralbench.base.Finding;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.PathData;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Outlines and openings at the edge of what makes sense: the right pieces or a clear error. The pieces are checked without
 * joints, where they fill the panel less its openings exactly, and with joints for overlap; areas are those of formulas or
 * of the geometry library.
 */
class DegenerateWallsTest {
  private static final double TILE = 100;
  private static final double SAME_AREA = 1e-6;

  private static PanelSpec panel(double tile, double joint, Contour outline, Contour... openings) {
    List<OpeningSpec> specs = new ArrayList<>();
    for (Contour opening : openings) {
      specs.add(new OpeningSpec("O" + (specs.size() + 1), "pipe", opening));
    }
    return new PanelSpec("A", "", "wall", "fixed", new TileSpec("T", tile, tile, 0, 0, -1), joint, 0, outline, specs,
        BondSpec.grid(), new OriginSpec.Balanced());
  }

  private static PanelSetOut setOut(PanelSpec panel) throws InputException {
    return SetOut.panel(panel, BondRegistry.standard(), Progress.NONE);
  }

  private static Contour path(String data) throws Exception {
    return PathData.parse(data).get(0).counterClockwise();
  }

  private static double pieceArea(PanelSetOut setOut) {
    return setOut.pieces().stream().mapToDouble(Piece::area).sum();
  }

  /** From a few starts, with joints and without, nothing is lost and nothing lies double. */
  private static void fills(PanelSpec panel, double area) throws Exception {
    for (double shift : new double[] {0, 1e-7, 13.37, 50}) {
      PanelSetOut closed = setOut(panel(TILE, 0, panel.outline(), openings(panel))
          .withOrigin(new OriginSpec.At(new Vec(shift, shift / 2))));
      assertEquals(area, pieceArea(closed), SAME_AREA * area + 0.02 * closed.pieces().size(), "from " + shift);
      assertEquals(area, closed.area(), SAME_AREA * area);
      apart(closed);
    }
    PanelSetOut balanced = setOut(panel);
    assertTrue(pieceArea(balanced) < area && pieceArea(balanced) > 0.85 * area, pieceArea(balanced) + " of " + area);
    apart(balanced);
  }

  private static Contour[] openings(PanelSpec panel) {
    return panel.openings().stream().map(OpeningSpec::outline).toArray(Contour[]::new);
  }

  private static void apart(PanelSetOut setOut) {
    List<Polygon> shapes = setOut.pieces().stream().map(DegenerateWallsTest::polygon).toList();
    for (int i = 0; i < shapes.size(); i++) {
      for (int k = i + 1; k < shapes.size(); k++) {
        if (shapes.get(i).getEnvelopeInternal().intersects(shapes.get(k).getEnvelopeInternal())) {
          Geometry common = OverlayNGRobust.overlay(shapes.get(i), shapes.get(k), OverlayNG.INTERSECTION);
          assertTrue(common.getArea() < 0.05, setOut.pieces().get(i).key() + " overlaps " + setOut.pieces().get(k).key());
        }
      }
    }
  }

  private static Polygon polygon(Piece piece) {
    GeometryFactory factory = new GeometryFactory();
    return factory.createPolygon(factory.createLinearRing(ring(piece.outline())), piece.holes().stream()
        .map(hole -> factory.createLinearRing(ring(hole))).toArray(LinearRing[]::new));
  }

  private static Coordinate[] ring(Contour contour) {
    List<Vec> points = contour.points(0.001);
    Coordinate[] ring = new Coordinate[points.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Vec point = points.get(i % points.size());
      ring[i] = new Coordinate(point.x(), point.y());
    }
    return ring;
  }

  @Test
  void duplicatePointsMakeNoDifference() throws Exception {
    fills(panel(TILE, 3, path("M 0 0 L 0 0 L 600 0 L 600 0 L 600 400 L 600 400.00000001 L 0 400 L 0 400 Z")), 240_000);
  }

  @Test
  void pointsOnAStraightEdgeMakeNoDifference() throws Exception {
    fills(panel(TILE, 3, path("M 0 0 L 200 0 L 300 0 L 600 0 L 600 400 L 0 400 Z")), 240_000);
  }

  @ParameterizedTest
  @ValueSource(strings = {"M 0 0 L 300 0 L 300 -50 L 300 0 L 600 0 L 600 400 L 0 400 Z",
      "M 0 0 L 600 0 L 600 400 L 300 400 L 300 200 L 300 400 L 0 400 Z"})
  void aSpikeWithoutWidthIsRefusedOrLeftOut(String path) throws Exception {
    PanelSpec panel = panel(TILE, 3, path(path));
    try {
      fills(panel, 240_000);
    } catch (InputException e) {
      assertTrue(e.problem().contains("crosses itself") || e.problem().contains("touches"), e.problem());
    }
  }

  @Test
  void aSpikeThinnerThanATenthOfAMillimetreIsPartOfTheWall() throws Exception {
    fills(panel(TILE, 3, path("M 0 0 L 600 0 L 600 400 L 300.04 400 L 300.02 450 L 300 400 L 0 400 Z")), 240_001);
  }

  @Test
  void aSliverBetweenAnOpeningAndTheEdgeIsKept() throws Exception {
    Contour opening = Contour.rectangle(0.05, 100, 200, 100);
    fills(panel(TILE, 3, Contour.rectangle(0, 0, 600, 400), opening), 220_000);
  }

  @Test
  void aWallOfATenthOfAMillimetreIsSmallerThanItsTile() {
    assertTrue(assertThrows(InputException.class, () -> setOut(panel(TILE, 3, Contour.rectangle(0, 0, 600, 0.1))))
        .problem().contains("larger than the panel"));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-7, -1e-7, 1e-4, -0.01})
  void twoRoundOpeningsMayTouchInAPoint(double apart) throws Exception {
    fills(panel(TILE, 3, Contour.rectangle(0, 0, 600, 400), Contour.circle(new Vec(200, 200), 80),
        Contour.circle(new Vec(360 + apart, 200), 80)), 240_000 - 2 * Math.PI * 6400);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-7, 1e-4})
  void aRoundOpeningMayTouchTheEdgeFromInside(double away) throws Exception {
    fills(panel(TILE, 3, Contour.rectangle(0, 0, 600, 400), Contour.circle(new Vec(300, 80 + away), 80)),
        240_000 - Math.PI * 6400);
  }

  @Test
  void aRoundFaceMayHoldARoundOpeningThatTouchesItsRim() throws Exception {
    fills(panel(TILE, 3, Contour.circle(new Vec(300, 300), 300), Contour.circle(new Vec(520, 300), 80)),
        Math.PI * (90_000 - 6400));
  }

  @Test
  void aHoleThatTouchesAllSidesOfATileLeavesItsFourCorners() throws Exception {
    PanelSetOut setOut = setOut(panel(TILE, 0, Contour.rectangle(0, 0, 300, 300), Contour.circle(new Vec(150, 150), 50))
        .withOrigin(new OriginSpec.At(Vec.ZERO)));
    List<Piece> corners = setOut.pieces().stream().filter(piece -> piece.kind() != PieceKind.WHOLE).toList();
    assertEquals(8, setOut.whole());
    assertEquals(4, corners.size());
    corners.forEach(piece -> assertEquals((10_000 - Math.PI * 2500) / 4, piece.area(), 0.01));
  }

  @ParameterizedTest
  @CsvSource({"0, 100, 200, 100", "200, 0, 100, 200", "400, 100, 200, 100", "200, 300, 100, 100", "0, 0, 200, 200"})
  void anOpeningMayLieAlongTheEdge(double x, double y, double width, double height) throws Exception {
    fills(panel(TILE, 3, Contour.rectangle(0, 0, 600, 400), Contour.rectangle(x, y, width, height)),
        240_000 - width * height);
  }

  @ParameterizedTest
  @CsvSource({"300, 100, 200, 150, 50_000", "300, 100.0000001, 200, 150, 50_000", "200, 150, 200, 150, 45_000",
      "120, 120, 50, 50, 20_000", "100, 100, 200, 100, 20_000", "300, 200, 100, 100, 30_000"})
  void openingsMayTouchOverlapOrHoldEachOther(double x, double y, double width, double height, String taken)
      throws Exception {
    fills(panel(TILE, 3, Contour.rectangle(0, 0, 600, 400), Contour.rectangle(100, 100, 200, 100),
        Contour.rectangle(x, y, width, height)), 240_000 - Double.parseDouble(taken.replace("_", "")));
  }

  @ParameterizedTest
  @CsvSource({"400, 'ring'", "600, 'ring'", "100, 'ring'"})
  void ringsThatDoNotFitAreRefused(String width, String said) {
    InputException e = assertThrows(InputException.class, () -> setOut(rings(width)));
    assertTrue(e.problem().contains(said) && !e.remedy().isBlank(), e.getMessage());
  }

  /** One ring of 90 mm in a face of 1 m leaves a disc of 2 x (500 - 90 - 3) mm, from a tile of 100 mm. */
  @Test
  void aDiscLargerThanTheTileIsFound() throws Exception {
    MuralSpec mural = new MuralSpec("M", "", "", LengthUnit.MILLIMETRE, "interior-dry", List.of(rings("90 mm")));
    List<Finding> found = SetOutChecks.findings(SetOut.mural(mural, BondRegistry.standard(), Progress.NONE)).stream()
        .filter(finding -> finding.code().equals("ring.disc")).toList();
    assertEquals(1, found.size());
    assertTrue(found.get(0).message().contains("814 mm across"), found.get(0).message());
  }

  private static PanelSpec rings(String widths) {
    return panel(TILE, 3, Contour.circle(new Vec(500, 500), 500))
        .withBond(new BondSpec("rings", 0, 0, Map.of("radius", "500 mm", "rings", widths)));
  }

  /** Tiles of 1 mm with joints of 0.5 mm on 50 m by 3 m: 50,000 x 3,000 / 1.5^2. */
  @Test
  void tooManyCellsAreRefusedAtOnceWithTheNumbers() {
    PanelSpec panel = panel(1, 0.5, Contour.rectangle(0, 0, 50_000, 3_000));
    InputException e = assertTimeout(Duration.ofSeconds(60), () -> assertThrows(InputException.class, () -> setOut(panel)));
    assertTrue(e.problem().contains("66666667") && e.problem().contains("5000000"), e.problem());
  }

  @Test
  void anOutlineOfTenThousandPointsIsTiled() throws Exception {
    List<Vec> corners = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      double angle = 2 * Math.PI * i / 10_000;
      double radius = 1000 + (i % 2 == 0 ? 2 : 0);
      corners.add(new Vec(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    PanelSpec panel = panel(TILE, 3, Contour.polygon(corners));
    PanelSetOut setOut = assertTimeout(Duration.ofSeconds(60), () -> setOut(panel));
    double area = 10_000 * 0.5 * 1000 * 1002 * Math.sin(2 * Math.PI / 10_000);
    assertEquals(area, setOut.area(), 1e-6 * area);
    assertEquals(area, pieceArea(setOut(panel(TILE, 0, panel.outline()).withOrigin(new OriginSpec.At(Vec.ZERO)))),
        1e-4 * area);
  }

  @Test
  void anArcWithoutLengthIsNoEdge() throws Exception {
    fills(panel(TILE, 3, path("M 0 0 L 600 0 A 50 50 0 0 1 600 0 L 600 400 L 0 400 Z")), 240_000);
  }

  /** SVG 2, 9.5.1: radii too small for the ends are scaled up until they reach; a radius of 0 is a straight line. */
  @Test
  void anArcWithRadiiTooSmallIsScaledUp() throws Exception {
    fills(panel(TILE, 3, path("M 0 0 L 600 0 A 10 10 0 0 1 600 400 L 0 400 Z")), 240_000 + Math.PI * 20_000);
    fills(panel(TILE, 3, path("M 0 0 L 600 0 A 0 10 0 0 1 600 400 L 0 400 Z")), 240_000);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e4, 1e6, -1e6})
  void aWallFarFromTheOriginIsTiledTheSame(double away) throws Exception {
    Contour outline = Contour.rectangle(away, away, 600, 400);
    Contour pipe = Contour.circle(new Vec(away + 300, away + 200), 70);
    PanelSetOut far = setOut(panel(TILE, 3, outline, pipe));
    PanelSetOut near = setOut(panel(TILE, 3, Contour.rectangle(0, 0, 600, 400), Contour.circle(new Vec(300, 200), 70)));
    assertEquals(near.pieces().size(), far.pieces().size());
    assertEquals(near.whole(), far.whole());
    for (int i = 0; i < near.pieces().size(); i++) {
      assertEquals(near.pieces().get(i).area(), far.pieces().get(i).area(), 1e-3);
    }
    apart(far);
  }
}
