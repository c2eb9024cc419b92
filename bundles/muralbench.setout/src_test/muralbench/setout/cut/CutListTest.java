// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import muralbench.setout.PieceKind;
import muralbench.setout.cut.CutGroup.Lot;
import muralbench.setout.cut.CutGroup.Placing;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Cubic;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CutListTest {
  private static final Contour SQUARE = Contour.rectangle(0, 0, 150, 150);
  private static final Contour OBLONG = Contour.rectangle(0, 0, 200, 100);
  /** No turn and no mirror image of it is like it. */
  private static final Contour ODD = Cuts.polygon(0, 0, 150, 0, 150, 60, 90, 60, 90, 130, 0, 130);

  private static void assertSame(Contour expected, Contour found) {
    assertTrue(Ring.of(expected).covers(Motion.NONE, Ring.of(found), 1e-6), () -> expected + " expected, was " + found);
  }

  @Test
  void leavesWholeTilesOut() {
    assertEquals(List.of(List.of("P-2")), new Cuts(150, 150).add(PieceKind.WHOLE, "T", SQUARE, SQUARE, Motion.NONE)
        .add(SQUARE, ODD, Motion.NONE).keys());
  }

  /** The four edge strips of a square tile, wherever they lie on the wall. */
  @Test
  void gathersTheStripsAlongAllFourEdges() {
    Cuts cuts = new Cuts(150, 150);
    Contour strip = Contour.rectangle(0, 0, 60, 150);
    for (int quarter = 0; quarter < 4; quarter++) {
      cuts.add(SQUARE, Cuts.turned(strip, SQUARE, 90 * quarter), Motion.shift(new Vec(quarter * 153, 900)));
    }
    List<CutGroup> groups = cuts.groups();
    assertEquals(1, groups.size());
    assertEquals(List.of(new Placing("P-1", 0), new Placing("P-2", 270), new Placing("P-3", 180),
        new Placing("P-4", 90)),
        groups.get(0).placings());
    assertSame(strip, groups.get(0).outline());
  }

  /** On an oblong face a strip along the long edge and one along the short edge stay two, whatever their sizes. */
  @Test
  void laysFacesOnFaces() {
    Contour along = Contour.rectangle(0, 0, 100, 50);
    Contour across = Contour.rectangle(0, 0, 50, 100);
    assertEquals(List.of(List.of("P-1", "P-3"), List.of("P-2", "P-4")), new Cuts(200, 100)
        .add(OBLONG, along, Motion.NONE).add(OBLONG, across, Motion.NONE)
        .add(OBLONG, Cuts.turned(along, OBLONG, 180), Motion.NONE)
        .add(OBLONG, Cuts.turned(across, OBLONG, 180), Motion.NONE).keys());
  }

  /** The glazed face cannot be turned over: opposite corners are alike, neighbouring ones are not. */
  @Test
  void keepsMirrorImagesApart() {
    Contour corner = Cuts.polygon(0, 0, 150, 0, 150, 100, 110, 150, 0, 150);
    assertEquals(List.of(List.of("P-1", "P-3"), List.of("P-2")), new Cuts(150, 150).add(SQUARE, corner, Motion.NONE)
        .add(SQUARE, Cuts.mirrored(corner, 150), Motion.NONE)
        .add(SQUARE, Cuts.turned(corner, SQUARE, 180), Motion.NONE).keys());
  }

  @ParameterizedTest
  @CsvSource({"3, 3", "4, 4", "5, 5", "6, 6", "8, 8"})
  void knowsTheTurnsOfARegularFace(int corners, int turns) {
    Contour face = Cuts.regular(corners, 100);
    Vec centre = new Vec(100, 100);
    Contour piece = Cuts.polygon(100, 100, 130, 95, 140, 125, 90, 120);
    Cuts cuts = new Cuts(200, 200);
    for (int k = 0; k < 2 * corners; k++) {
      cuts.add(face, piece.moved(Motion.turn(180.0 * k / corners, centre)), Motion.NONE);
    }
    // Odd multiples of half a face turn are no turn of the face, unless the face has that turn too.
    assertEquals(List.of(turns, turns), cuts.keys().stream().map(List::size).toList());
  }

  @Test
  void findsOnlyHalfTurnsOnARhomboidAndNoneOnAKite() {
    Contour rhomboid = Cuts.polygon(0, 0, 200, 0, 240, 100, 40, 100);
    Contour kite = Cuts.polygon(100, 0, 200, 120, 100, 160, 0, 120);
    Contour piece = Cuts.polygon(100, 40, 130, 45, 120, 60, 100, 55);
    assertEquals(1, new Cuts(240, 100).add(rhomboid, piece, Motion.NONE)
        .add(rhomboid, Cuts.turned(piece, rhomboid, 180), Motion.NONE).groups().size());
    assertEquals(2, new Cuts(200, 160).add(kite, piece, Motion.NONE)
        .add(kite, piece.moved(Motion.turn(180, new Vec(100, 80))), Motion.NONE).groups().size());
  }

  /** A bond that lays oblongs both ways: each face is a turned copy of the other. */
  @Test
  void gathersPiecesOfFacesLaidAcross() {
    Contour lying = Contour.rectangle(0, 0, 200, 100);
    Contour standing = Contour.rectangle(-100, 0, 100, 200);
    Contour piece = Cuts.polygon(0, 0, 200, 0, 200, 40, 0, 80);
    List<CutGroup> groups = new Cuts(200, 100).add(standing, piece.moved(Motion.turn(90, Vec.ZERO)), Motion.NONE)
        .add(lying, piece, Motion.NONE).groups();
    assertEquals(List.of(new Placing("P-1", 0), new Placing("P-2", 90)), groups.get(0).placings());
    assertSame(Contour.rectangle(0, 0, 100, 200), groups.get(0).face());
  }

  @Test
  void keepsTileKindsApart() {
    assertEquals(2, new Cuts(150, 150).add(SQUARE, ODD, Motion.NONE)
        .add(PieceKind.NOTCHED, "U", SQUARE, ODD, Motion.NONE).groups().size());
  }

  @ParameterizedTest
  @CsvSource({"0.005, 1", "-0.005, 1", "0.02, 2", "-0.02, 2"})
  void looksCloserThanAHundredthOfAMillimetre(double wider, int groups) {
    assertEquals(groups, new Cuts(150, 150).add(SQUARE, Contour.rectangle(0, 0, 150, 60), Motion.NONE)
        .add(SQUARE, Contour.rectangle(0, 0, 150, 60 + wider), Motion.NONE).groups().size());
  }

  @Test
  void comparesHolesWithTheirPlaces() {
    Contour hole = Contour.circle(new Vec(50, 60), 12).reversed();
    assertEquals(List.of(List.of("P-1", "P-2"), List.of("P-3"), List.of("P-4")), new Cuts(150, 150)
        .add(SQUARE, SQUARE, Motion.NONE, hole)
        .add(SQUARE, SQUARE, Motion.turn(20, Vec.ZERO), Cuts.turned(hole, SQUARE, 90))
        .add(SQUARE, SQUARE, Motion.NONE, Contour.circle(new Vec(50, 61), 12).reversed())
        .add(SQUARE, SQUARE, Motion.NONE, Contour.circle(new Vec(60, 50), 12).reversed()).keys());
  }

  /** Cut by the same round edge on two sides; the arcs start and end in other places and run in pieces. */
  @Test
  void comparesCurvedEdgesHoweverTheyAreParted() {
    Vec centre = new Vec(-20, -20);
    double from = Math.asin(20 / 160.0);
    Arc arc = Arc.circular(centre, 160, from, Math.PI / 2 - 2 * from);
    List<Line> sides = List.of(new Line(arc.end(), Vec.ZERO), new Line(Vec.ZERO, arc.start()));
    Contour one = new Contour(List.of(arc, sides.get(0), sides.get(1)));
    Contour parted = new Contour(List.of(sides.get(1), arc.part(0, 0.37), arc.part(0.37, 1), sides.get(0)));
    Contour flatter = new Contour(List.of(new Cubic(arc.start(), arc.at(0.33), arc.at(0.67), arc.end()), sides.get(0),
        sides.get(1)));
    assertEquals(List.of(List.of("P-1", "P-2"), List.of("P-3")), new Cuts(150, 150).add(SQUARE, one, Motion.NONE)
        .add(SQUARE, Cuts.turned(parted, SQUARE, 270), Motion.turn(33, Vec.ZERO)).add(SQUARE, flatter, Motion.NONE)
        .keys());
  }

  /** A round face can be turned by any angle; only the cut says how it lies. */
  @Test
  void turnsPiecesOfRoundFacesByAnyAngle() {
    Contour face = Contour.circle(new Vec(50, 50), 50);
    double angle = Math.acos(0.4);
    Arc rim = Arc.circular(new Vec(50, 50), 50, -angle, 2 * angle);
    Contour cap = new Contour(List.of(rim, new Line(rim.end(), rim.start())));
    Contour parted = new Contour(List.of(rim.part(0.3, 1), cap.segments().get(1), rim.part(0, 0.3)));
    List<CutGroup> groups = new Cuts(100, 100).add(face, Cuts.turned(parted, face, 17.3), Motion.NONE)
        .add(face, Cuts.turned(cap, face, 211), Motion.turn(5, Vec.ZERO)).add(face, cap, Motion.NONE).groups();
    assertEquals(List.of("P-1", "P-2", "P-3"), groups.get(0).keys());
    assertEquals(70, 100 - groups.get(0).outline().box().width(), 1e-6);
    assertEquals(List.of(342.7, 144.0, 0.0), groups.get(0).placings().stream().map(Placing::turn).toList());
  }

  /** Notched from below or from the right to the same point: the same corners, the same area, but mirror images. */
  @Test
  void doesNotTakeTheSameCornersForTheSameShape() {
    Contour below = Cuts.polygon(0, 0, 60, 90, 150, 0, 150, 150, 0, 150);
    Contour right = Cuts.polygon(0, 0, 150, 0, 60, 90, 150, 150, 0, 150);
    assertEquals(2, new Cuts(150, 150).add(SQUARE, below, Motion.NONE).add(SQUARE, right, Motion.NONE).groups().size());
  }

  /** A slit so thin that everything of the piece without it lies on the piece with it. */
  @Test
  void seesASlitWhicheverPieceComesFirst() {
    Contour without = Contour.rectangle(0, 0, 150, 100);
    Contour slit = Cuts.polygon(0, 0, 150, 0, 150, 100, 75.004, 100, 75, 60, 74.996, 100, 0, 100);
    for (List<Contour> order : List.of(List.of(without, slit), List.of(slit, without))) {
      Cuts cuts = new Cuts(150, 150);
      order.forEach(piece -> cuts.add(SQUARE, piece, Motion.NONE));
      assertEquals(2, cuts.groups().size());
    }
  }

  /** A bond of two faces: equal pieces in the middle of each come from different faces. */
  @Test
  void keepsDifferentFacesOfOneTileKindApart() {
    Contour lower = Contour.rectangle(0, 2, 200, 96);
    Contour piece = Cuts.polygon(60, 30, 150, 30, 120, 70);
    assertEquals(2, new Cuts(200, 100).add(OBLONG, piece, Motion.NONE).add(lower, piece, Motion.NONE).groups().size());
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "90, 0", "180, 0", "270, 0", "30, 330", "-30, 30", "45, 45", "135, 45", "100, 350"})
  void drawsTheFirstPieceAsItHangsWithItsFaceLevel(double hangs, double turned) {
    CutGroup group = new Cuts(150, 150).add(SQUARE, ODD, Motion.turn(hangs, new Vec(700, 1200))).groups().get(0);
    assertEquals(List.of(new Placing("P-1", turned)), group.placings());
    assertSame(Cuts.turned(ODD, SQUARE, hangs + turned), group.outline());
    assertSame(SQUARE, group.face());
    assertTrue(group.outline().signedArea() > 0);
  }

  /** A hole in the middle does not care how the tile lies, one on the axis only about halves. */
  @ParameterizedTest
  @CsvSource({"75, 0, 0, 0", "40, 90, 180, 270"})
  void turnsATileAsLittleAsWillDo(double across, double left, double half, double right) {
    Contour hole = Contour.circle(new Vec(across, 75), 12).reversed();
    Cuts cuts = new Cuts(150, 150).add(SQUARE, SQUARE, Motion.NONE, hole);
    for (double hangs : List.of(270.0, 180.0, 90.0)) {
      cuts.add(SQUARE, SQUARE, Motion.turn(hangs, Vec.ZERO), hole);
    }
    assertEquals(List.of(0.0, left, half, right),
        cuts.groups().get(0).placings().stream().map(Placing::turn).toList());
  }

  @Test
  void gathersPiecesInLotsOfOneTurn() {
    Cuts cuts = new Cuts(150, 150);
    for (double hangs : List.of(180.0, 0.0, 180.0, 90.0)) {
      cuts.add(SQUARE, ODD, Motion.turn(hangs, Vec.ZERO));
    }
    assertEquals(List.of(new Lot(0, List.of("P-1", "P-3")), new Lot(180, List.of("P-2")), new Lot(90, List.of("P-4"))),
        cuts.groups().get(0).lots());
  }

  @Test
  void knowsFacesThatCannotBeLaidWrongly() {
    Contour kite = Cuts.polygon(100, 0, 200, 120, 100, 160, 0, 120);
    Contour middle = Cuts.polygon(90, 60, 110, 60, 100, 80);
    assertTrue(new Cuts(200, 160).add(kite, middle, Motion.NONE).groups().get(0).fitsOneWay());
    for (Contour face : List.of(SQUARE, OBLONG, Cuts.regular(6, 100), Contour.circle(new Vec(100, 80), 80))) {
      assertFalse(new Cuts(200, 160).add(face, middle, Motion.NONE).groups().get(0).fitsOneWay());
    }
  }

  @Test
  void numbersGroupsInTheOrderOfTheirFirstPieces() {
    List<CutGroup> groups = new Cuts(150, 150).add(SQUARE, ODD, Motion.NONE)
        .add(SQUARE, Contour.rectangle(0, 0, 150, 60), Motion.NONE).add(SQUARE, ODD, Motion.NONE)
        .add(SQUARE, Contour.rectangle(0, 0, 150, 10), Motion.NONE).groups();
    assertEquals(List.of(1, 2, 3), groups.stream().map(CutGroup::number).toList());
    assertEquals(List.of("P-1", "P-3"), groups.get(0).keys());
    assertEquals(ODD.area(), groups.get(0).area());
  }

  @Test
  void sortsTenThousandPiecesInSeconds() {
    Random random = new Random(5);
    Cuts cuts = new Cuts(150, 150);
    IntStream.range(0, 10_000).forEach(i -> cuts.add(SQUARE, Cuts.turned(Cuts.polygon(0, 0, 150, 0, 150,
        1 + random.nextDouble() * 148, 0, 1 + random.nextDouble() * 148), SQUARE, 90 * (i % 4)), Motion.NONE));
    assertTimeout(Duration.ofSeconds(30), () -> assertTrue(cuts.groups().size() > 9_900));
  }
}
