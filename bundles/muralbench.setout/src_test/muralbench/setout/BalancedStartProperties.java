// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import muralbench.base.Progress;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * A balanced start against brute force: no start of a fine grid leaves a wider smallest cut. Widths are measured here anew:
 * between facing edges of pieces with square corners, and by the least diameter of the geometry library for others.
 */
class BalancedStartProperties {
  private static final double JOINT = 3;
  private static final int STEPS = 26;
  /** On square edges the start is exact. */
  private static final double EXACT = 1e-6;
  private static final double SLANTING = 1;
  /** Two percent of the tile. */
  private static final double CURVED = 3;

  private record Bonding(BondSpec bond, TileSpec tile, double along, double across) {}

  private static Bonding grid() {
    return new Bonding(BondSpec.grid(), tile(150, 150), 153, 153);
  }

  private static TileSpec tile(double width, double height) {
    return new TileSpec("T", width, height, 0, 0, -1);
  }

  private static Bonding bond(String kind, double offset, double width, double height, double along, double across) {
    return new Bonding(new BondSpec(kind, offset, 0, Map.of()), tile(width, height), along, across);
  }

  @Property(tries = 6)
  void gridOnStairsWithADoor(@ForAll long seed) throws Exception {
    neverBeaten(stairs(grid(), new Random(seed)), grid(), BalancedStartProperties::squareWidth, EXACT);
  }

  @Property(tries = 6)
  void runningBondOnStairsWithADoor(@ForAll long seed) throws Exception {
    Bonding half = bond("running", 0.5, 200, 100, 203, 206);
    neverBeaten(stairs(half, new Random(seed)), half, BalancedStartProperties::squareWidth, EXACT);
  }

  /** Every second course would end 2 mm before the right end: no start to hold the chosen one against. */
  @Example
  void runningBondWhereWiderCutsWouldLeaveGaps() throws Exception {
    Bonding half = bond("running", 0.5, 200, 100, 203, 206);
    neverBeaten(stairs(half, new Random(6)), half, BalancedStartProperties::squareWidth, EXACT);
  }

  @Property(tries = 3)
  void herringboneOnStairs(@ForAll long seed) throws Exception {
    Bonding herringbone = bond("herringbone", 0, 203, 100, 412, 412);
    neverBeaten(stairs(herringbone, new Random(seed)), herringbone, BalancedStartProperties::squareWidth, 0.05);
  }

  @Property(tries = 4)
  void gridUnderASlopingCeiling(@ForAll long seed) throws Exception {
    neverBeaten(raked(grid(), new Random(seed)), grid(), BalancedStartProperties::straightWidth, SLANTING);
  }

  @Property(tries = 4)
  void gridUnderAnArch(@ForAll long seed) throws Exception {
    neverBeaten(arched(grid(), new Random(seed)), grid(),
        BalancedStartProperties::curvedWidth, CURVED);
  }

  @Example
  void hexagonsOnARoundFace() throws Exception {
    Bonding hexagons = bond("hexagon", 0, 150, 150, 153, 265);
    neverBeaten(panel(hexagons, Contour.circle(new Vec(400, 400), 410), List.of()), hexagons,
        BalancedStartProperties::curvedWidth, CURVED);
  }

  @Property(tries = 40)
  void aRectangleHasEqualCutsAtOppositeEnds(@ForAll @DoubleRange(min = 400, max = 3000) double width,
      @ForAll @DoubleRange(min = 400, max = 3000) double height) throws Exception {
    List<OpeningSpec> outlet = List.of(new OpeningSpec("O", "outlet",
        Contour.rectangle(width * 0.37, height * 0.41, 57, 89)));
    PanelSetOut setOut = setOut(panel(grid(), Contour.rectangle(0, 0, width, height), outlet));
    Box first = setOut.pieces().get(0).box();
    Box last = setOut.pieces().get(setOut.pieces().size() - 1).box();
    assertEquals(first.width(), last.width(), 1e-6);
    assertEquals(first.height(), last.height(), 1e-6);
    assertTrue(Math.min(first.width(), first.height()) > (150 - JOINT) / 2 - 1e-6, first.toString());
  }

  private static void neverBeaten(PanelSpec panel, Bonding bonding, ToDoubleFunction<Piece> width, double tolerance)
      throws Exception {
    double chosen = smallest(setOut(panel), width);
    double face = Math.min(bonding.tile().width(), bonding.tile().height());
    for (int i = 0; i < STEPS; i++) {
      for (int k = 0; k < STEPS; k++) {
        Vec start = new Vec(bonding.along() * i / STEPS, bonding.across() * k / STEPS);
        PanelSetOut tried = setOut(panel.withOrigin(new OriginSpec.At(start)));
        double smallest = hasGap(tried) ? 0 : Math.min(face, smallest(tried, width));
        assertTrue(smallest <= chosen + tolerance, start + " leaves " + smallest + ", the chosen start " + chosen);
      }
    }
  }

  private static PanelSetOut setOut(PanelSpec panel) throws Exception {
    return SetOut.panel(panel, BondRegistry.standard(), Progress.NONE);
  }

  private static double smallest(PanelSetOut setOut, ToDoubleFunction<Piece> width) {
    return setOut.pieces().stream().filter(piece -> piece.kind() != PieceKind.WHOLE).mapToDouble(width).min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * Whether straight courses leave a straight end of the panel without tile: the whole lower or upper end, or the left or
   * right end in more than one of four courses.
   */
  private static boolean hasGap(PanelSetOut setOut) {
    if (!List.of("grid", "running").contains(setOut.spec().bond().kind())) {
      return false;
    }
    Box tiles = setOut.pieces().stream().map(Piece::box).reduce(Box::and).orElseThrow();
    Box wall = setOut.spec().outline().box();
    return setOut.spec().outline().segments().stream().filter(Segment::straight).map(Segment::box)
        .anyMatch(edge -> edge.width() < EXACT && upright(setOut, edge, wall)
            || edge.height() < EXACT && (edge.minY() < wall.minY() + EXACT && tiles.minY() > edge.minY() + EXACT
            || edge.minY() > wall.maxY() - EXACT && tiles.maxY() < edge.minY() - EXACT));
  }

  /** Whether more than one of four courses stops short of an upright end. */
  private static boolean upright(PanelSetOut setOut, Box edge, Box wall) {
    boolean left = edge.minX() < wall.minX() + EXACT;
    if (!left && edge.minX() < wall.maxX() - EXACT) {
      return false;
    }
    Map<Integer, Double> shortfall = new HashMap<>();
    for (Piece piece : setOut.pieces()) {
      Box box = piece.box();
      if (box.maxY() > edge.minY() + 1 && box.minY() < edge.maxY() - 1) {
        shortfall.merge(piece.course(), left ? box.minX() - edge.minX() : edge.minX() - box.maxX(), Math::min);
      }
    }
    return 4 * shortfall.values().stream().filter(gap -> gap > EXACT).count() > shortfall.size();
  }

  /** The least distance between facing edges of a piece with square corners and no holes. */
  private static double squareWidth(Piece piece) {
    double least = Double.POSITIVE_INFINITY;
    for (Segment one : piece.outline().segments()) {
      for (Segment other : piece.outline().segments()) {
        Vec way = one.end().minus(one.start());
        Vec back = other.end().minus(other.start());
        Vec apart = other.start().minus(one.start());
        double length = way.length();
        double along = apart.dot(way) / length;
        double overlap = Math.min(length, along) - Math.max(0, along - back.length());
        double distance = way.cross(apart) / length;
        if (Math.abs(way.cross(back)) < EXACT * length && way.dot(back) < 0 && overlap > 1e-3 && distance > 0) {
          least = Math.min(least, distance);
        }
      }
    }
    return least;
  }

  /** The least width of a piece with straight edges and no corner inwards, by the geometry library. */
  private static double straightWidth(Piece piece) {
    List<Segment> sides = piece.outline().segments();
    Coordinate[] ring = new Coordinate[sides.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Vec corner = sides.get(i % sides.size()).start();
      ring[i] = new Coordinate(corner.x(), corner.y());
    }
    return new MinimumDiameter(new GeometryFactory().createPolygon(ring)).getLength();
  }

  /** The least width of a piece without corners inwards, curves as chords, by the geometry library. */
  private static double curvedWidth(Piece piece) {
    List<Vec> points = piece.outline().points(0.01);
    Coordinate[] ring = new Coordinate[points.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      ring[i] = new Coordinate(points.get(i % points.size()).x(), points.get(i % points.size()).y());
    }
    return new MinimumDiameter(new GeometryFactory().createPolygon(ring)).getLength();
  }

  private static PanelSpec panel(Bonding bonding, Contour outline, List<OpeningSpec> openings) {
    return new PanelSpec("A", "", "wall", "fixed", bonding.tile(), JOINT, 0, outline, openings, bonding.bond(),
        new OriginSpec.Balanced());
  }

  private static PanelSpec stairs(Bonding bonding, Random random) {
    double width = 600 + random.nextInt(600);
    double height = 450 + random.nextInt(300);
    int steps = 1 + random.nextInt(3);
    List<Vec> corners = new ArrayList<>(List.of(Vec.ZERO, new Vec(width, 0), new Vec(width, height)));
    double up = height;
    for (int i = 1; i <= steps; i++) {
      double right = width * (1 - (i + 0.6 * random.nextDouble() - 0.3) / (steps + 1));
      double down = height / (steps + 2) * (0.4 + random.nextDouble());
      corners.add(new Vec(right, up));
      corners.add(new Vec(right, up - down));
      up -= down;
    }
    corners.add(new Vec(0, up));
    List<OpeningSpec> doors = random.nextBoolean() ? List.of() : List.of(new OpeningSpec("D", "door",
        Contour.rectangle(70 + 100 * random.nextDouble(), 0, 210 + random.nextInt(80), up * 0.7)));
    return panel(bonding, Contour.polygon(corners), up * 0.7 > 160 ? doors : List.of());
  }

  private static PanelSpec raked(Bonding bonding, Random random) {
    double width = 500 + random.nextInt(500);
    double height = 500 + random.nextInt(300);
    return panel(bonding, Contour.polygon(List.of(Vec.ZERO, new Vec(width, 0),
        new Vec(width, height * (0.5 + 0.4 * random.nextDouble())), new Vec(width * random.nextDouble() * 0.8, height),
        new Vec(0, height * (0.5 + 0.4 * random.nextDouble())))), List.of());
  }

  private static PanelSpec arched(Bonding bonding, Random random) {
    double width = 500 + random.nextInt(600);
    double spring = 200 + random.nextInt(300);
    Vec right = new Vec(width, spring);
    return panel(bonding, new Contour(List.of(new Line(Vec.ZERO, new Vec(width, 0)), new Line(new Vec(width, 0), right),
        Arc.circular(new Vec(width / 2, spring), width / 2, 0, Math.PI), new Line(new Vec(0, spring), Vec.ZERO))),
        List.of());
  }
}
