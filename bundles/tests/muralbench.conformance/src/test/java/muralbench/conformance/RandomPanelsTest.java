// SPDX-License-Identifier: EPL-2.0
package muralbench.conformance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import muralbench.base.Progress;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.SetOut;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Random panels with random openings, set out and compared piece by piece with the cuts of an independent polygon
 * engine. Both start from the same description of the wall; the origin of a balanced bond is taken from the set-out.
 */
class RandomPanelsTest {
  private static final int PANELS = 240;
  private static final int SAMPLE = 80;

  /** Chords against true curves, along the longest cut of a tile, mm². */
  private static final double TOLERANCE = 0.02;

  static LongStream panels() {
    return LongStream.rangeClosed(1, PANELS);
  }

  @ParameterizedTest(name = "panel {0}")
  @MethodSource("panels")
  void piecesAreThoseOfTheIndependentEngine(long seed) throws Exception {
    RandomWall wall = RandomWall.of(seed);
    PanelSetOut setOut = SetOut.panel(wall.panel(), BondRegistry.standard(), Progress.NONE);
    Area region = wall.region(setOut.origin());
    CountedCells counted = CountedCells.of(wall.panel(), region);
    Map<String, List<Piece>> pieces = byCell(setOut, counted);

    assertEquals(Shapes.area(region), setOut.area(), TOLERANCE, "area of the panel less its openings");
    double tiled = setOut.pieces().stream().mapToDouble(Piece::area).sum();
    assertEquals(setOut.area(), tiled + counted.joints(), TOLERANCE * (1 + pieces.size()), "tile and joint fill it");
    for (String cell : pieces.keySet()) {
      assertTrue(counted.faces().containsKey(cell), "no tile at " + cell);
    }
    counted.faces().forEach((cell, left) -> compare(cell, left, pieces.getOrDefault(cell, List.of()), setOut));
    assertEquals(setOut.pieces().size(), new HashSet<>(setOut.pieces().stream().map(Piece::key).toList()).size());
  }

  @Test
  void thePanelsAreOfEverySort() throws Exception {
    Set<PieceKind> kinds = EnumSet.noneOf(PieceKind.class);
    int withOpenings = 0;
    int inTwoParts = 0;
    for (long seed : panels().limit(SAMPLE).toArray()) {
      PanelSetOut setOut = SetOut.panel(RandomWall.of(seed).panel(), BondRegistry.standard(), Progress.NONE);
      setOut.pieces().forEach(piece -> kinds.add(piece.kind()));
      withOpenings += setOut.spec().openings().isEmpty() ? 0 : 1;
      inTwoParts += setOut.pieces().size() > setOut.tilesToOrder() ? 1 : 0;
    }
    assertEquals(EnumSet.allOf(PieceKind.class), kinds);
    assertTrue(withOpenings > SAMPLE / 3, withOpenings + " panels with openings");
    assertTrue(inTwoParts > SAMPLE / 20, inTwoParts + " panels with tiles cut in two");
  }

  private static void compare(String cell, Area left, List<Piece> pieces, PanelSetOut setOut) {
    List<Double> expected = withoutDust(Shapes.parts(left));
    List<Double> found = withoutDust(pieces.stream().map(Piece::area).sorted().toList());
    assertEquals(expected.size(), found.size(), () -> "parts of " + cell + ": " + expected + " but " + found);
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i), found.get(i), TOLERANCE, "area at " + cell);
    }
    double face = setOut.spec().tile().width() * setOut.spec().tile().height();
    boolean whole = Shapes.area(left) > face - SetOut.DUST_AREA / 2;
    if (whole || Shapes.area(left) < face - TOLERANCE) {
      assertEquals(whole, pieces.size() == 1 && pieces.get(0).kind() == PieceKind.WHOLE, "whole at " + cell);
    }
    inside(cell, left, pieces, setOut);
  }

  /** The pieces cover what is left of their face and nothing else, so they neither overlap nor leave the panel. */
  private static void inside(String cell, Area left, List<Piece> pieces, PanelSetOut setOut) {
    Area uncovered = new Area(left);
    double tolerance = TOLERANCE;
    for (Piece piece : pieces) {
      tolerance += 2 * Outline.STRAY * piece.outline().length(); // chords on either side are not the same chords
    }
    for (Piece piece : pieces) {
      Area shape = area(piece, setOut);
      Area outside = new Area(shape);
      outside.subtract(left);
      assertEquals(0, Shapes.area(outside), tolerance, () -> piece.key() + " reaches outside " + cell);
      uncovered.subtract(shape);
    }
    assertEquals(0, Shapes.area(uncovered), tolerance, () -> "not covered of " + cell);
  }

  private static Area area(Piece piece, PanelSetOut setOut) {
    Motion back = toBond(setOut);
    Area shape = new Area(Shapes.path(points(piece.outline(), back)));
    for (Contour hole : piece.holes()) {
      shape.subtract(new Area(Shapes.path(points(hole, back))));
    }
    return shape;
  }

  private static List<Point2D> points(Contour contour, Motion motion) {
    List<Point2D> points = new ArrayList<>();
    for (Vec corner : contour.points(Outline.STRAY)) {
      Vec moved = motion.of(corner);
      points.add(new Point2D.Double(moved.x(), moved.y()));
    }
    return points;
  }

  /** From the wall to the coordinates of the independent count; made here, not taken from the pieces. */
  private static Motion toBond(PanelSetOut setOut) {
    return Motion.shift(Vec.ZERO.minus(setOut.origin())).then(Motion.turn(-setOut.spec().bond().rotation(), Vec.ZERO));
  }

  /** The pieces by the cell their face lies in, counted here from where the face is. */
  private static Map<String, List<Piece>> byCell(PanelSetOut setOut, CountedCells counted) {
    double rise = setOut.spec().tile().height() + setOut.spec().joint();
    double module = setOut.spec().tile().width() + setOut.spec().joint();
    Motion back = toBond(setOut);
    Map<String, List<Piece>> cells = new HashMap<>();
    for (Piece piece : setOut.pieces()) {
      Vec corner = back.of(piece.face().segments().get(0).start());
      long course = Math.round(corner.y() / rise);
      long position = Math.round((corner.x() - counted.shift(course)) / module);
      assertEquals(course * rise, corner.y(), 1e-6, piece.key());
      assertEquals(position * module + counted.shift(course), corner.x(), 1e-6, piece.key());
      cells.computeIfAbsent(CountedCells.name(course, position), name -> new ArrayList<>()).add(piece);
    }
    return cells;
  }

  /** Leaves out parts so close to the dust limit that either answer is right. */
  private static List<Double> withoutDust(List<Double> areas) {
    return areas.stream().filter(area -> area > SetOut.DUST_AREA + TOLERANCE).toList();
  }
}
