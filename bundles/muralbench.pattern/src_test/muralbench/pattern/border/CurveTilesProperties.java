// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.pattern.symmetry.FriezeGroup;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.locationtech.jts.geom.Polygon;

/** What holds for the pieces of any band on a circle, an arc, an arch and a flat arch. */
class CurveTilesProperties {
  /** Chords of the check lie up to 1e-4 off the arcs. */
  private static final double NEAR = 5e-4;

  /** A band with its pieces. */
  record Laid(CurveLayout layout, List<CurveTile> tiles) {}

  @Provide
  Arbitrary<Laid> bands() {
    return Combinators.combine(Arbitraries.integers().between(0, 3), Arbitraries.doubles().between(600, 1500),
        Arbitraries.doubles().between(300, 900), Arbitraries.doubles().between(60, 110), Arbitraries.doubles().between(25, 55),
        Arbitraries.doubles().between(0.55, 0.98), Arbitraries.integers().between(0, 2)).as(CurveTilesProperties::laid)
        .filter(Objects::nonNull);
  }

  /** A band that closes, or null: a flat arch with short tiles does not. */
  private static Laid laid(int kind, double width, double leg, double tile, double deep, double flat, int which) {
    Curve curve = switch (kind) {
      case 0 -> Curve.circle(new Vec(1000, 900), width / 2);
      case 1 -> Curve.arc(new Vec(1000, 900), width, 40 + 50 * which, 180 * flat);
      case 2 -> Curve.arch(new Vec(100, 50), width, leg);
      default -> Curve.segmentalArch(new Vec(100, 50), width, leg, flat * width / 2);
    };
    CurveBorder border = new CurveBorder(curve, BandRow.of(tile, deep, 2), new JointRange(1.5, 3, 5),
        Permits.NONE.move(5, 5).scale(0.12).ends(0.05));
    try {
      List<CurveLayout> layouts = CurveSolver.solve(border, LengthUnit.MILLIMETRE).layouts();
      if (layouts.isEmpty()) {
        return null;
      }
      CurveLayout layout = layouts.get(Math.min(which, layouts.size() - 1));
      return new Laid(layout, CurveTiles.lay(layout, Sequence.of(FriezeGroup.STEP, "leaf")));
    } catch (InputException refused) {
      throw new AssertionError(refused);
    }
  }

  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void neighboursAreAJointApart(@ForAll("bands") Laid laid) {
    Statistics.collect(kind(laid.layout().border().curve()));
    List<Polygon> faces = laid.tiles().stream().map(tile -> Faces.of(tile.face())).toList();
    boolean ring = laid.layout().border().curve().full();
    for (int i = 0; i < faces.size() - (ring ? 0 : 1); i++) {
      assertEquals(laid.layout().joint(), faces.get(i).distance(faces.get((i + 1) % faces.size())), NEAR);
    }
    for (int i = 0; i + 2 < faces.size() - (ring ? 1 : 0); i++) {
      assertTrue(faces.get(i).distance(faces.get(i + 2)) > laid.layout().joint());
    }
  }

  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void piecesLieBetweenTheCurveAndTheField(@ForAll("bands") Laid laid) {
    Curve curve = laid.layout().border().curve();
    double width = laid.layout().border().row().width();
    double outer = curve.radius() - laid.layout().move();
    for (CurveTile tile : laid.tiles()) {
      Polygon face = Faces.of(tile.face());
      if (tile.piece() == BorderPiece.WEDGE) {
        for (Vec point : tile.face().points(0.01)) {
          double radius = point.distance(curve.centre());
          assertTrue(radius <= outer + 1e-6 && radius >= outer - width - 0.011, () -> radius + " in " + outer);
        }
      }
      laid.layout().field().ifPresent(field -> assertTrue(Faces.of(field).distance(face) >= laid.layout().joint() - NEAR));
    }
  }

  /** A disc's share in a strip of half width h from its middle outwards is r² asin(h / r) + h sqrt(r² - h²). */
  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void wedgesAndJointsMakeUpTheRing(@ForAll("bands") Laid laid) {
    CurveLayout layout = laid.layout();
    if (layout.border().curve().legs()) {
      return;
    }
    double outer = layout.border().curve().radius() - layout.move();
    double inner = outer - layout.border().row().width();
    double sector = layout.border().curve().halfAngle() * (outer * outer - inner * inner);
    double joints = layout.wedges() * (strip(outer, layout.joint() / 2) - strip(inner, layout.joint() / 2));
    assertEquals(sector - joints, laid.tiles().stream().mapToDouble(CurveTile::area).sum(), 1e-9 * sector);
  }

  private static double strip(double r, double h) {
    return r * r * Math.asin(h / r) + h * Math.sqrt(r * r - h * h);
  }

  /** The band of an arch: legs and half a ring, less the joints, of which the two at the springing lines are wholes. */
  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void piecesAndJointsMakeUpTheArch(@ForAll("bands") Laid laid) {
    CurveLayout layout = laid.layout();
    Curve curve = layout.border().curve();
    if (!curve.legs() || curve.halfAngle() != Math.PI / 2) {
      return;
    }
    double width = layout.border().row().width();
    double outer = curve.radius() - layout.move();
    double half = layout.joint() / 2;
    double band = 2 * curve.leg() * width + Math.PI / 2 * (outer * outer - (outer - width) * (outer - width));
    double legJoints = 2 * width * ((layout.legTiles() - (layout.foot() > 0 ? 0 : 1)) * 2 * half + half);
    double arcJoints = layout.wedges() * (strip(outer, half) - strip(outer - width, half));
    assertEquals(band - legJoints - arcJoints, laid.tiles().stream().mapToDouble(CurveTile::area).sum(), 1e-9 * band);
  }

  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void everyLayoutKeepsWhatIsPermitted(@ForAll("bands") Laid laid) {
    CurveLayout layout = laid.layout();
    assertTrue(layout.joint() >= 1.5 - 1e-6 && layout.joint() <= 5 + 1e-6);
    assertTrue(Math.abs(layout.move()) <= 5 && Math.abs(layout.stretch()) <= 0.12 + 1e-8);
    assertTrue(layout.legResidual() <= 1e-9);
    assertEquals(0, layout.wedges() % 2);
    assertEquals(laid.tiles().size(), layout.wedges() + 2 * (layout.legTiles() + (layout.foot() > 0 ? 1 : 0)));
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void drawingsLieOnTheirPiecesWithTheOuterEdgeOut(@ForAll("bands") Laid laid) {
    double length = laid.layout().border().row().length();
    double width = laid.layout().border().row().width();
    for (CurveTile tile : laid.tiles().stream().filter(tile -> tile.piece() == BorderPiece.WEDGE).toList()) {
      Vec middle = tile.placed().of(new Vec(length / 2, width / 2));
      assertTrue(tile.face().box().holds(new Box(middle.x(), middle.y(), middle.x(), middle.y())));
      // Of a glide every other tile lies with its drawing's lower edge out.
      Vec top = tile.placed().of(new Vec(length / 2, tile.step() == 0 ? width : 0));
      Vec centre = laid.layout().border().curve().centre();
      assertEquals(width / 2, top.distance(centre) - middle.distance(centre), 1e-6);
    }
  }

  /** In a leg the run goes up on the left and down on the right; the upper end of a drawing is that of its tile. */
  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void drawingsInLegsEndWhereTheirTilesEnd(@ForAll("bands") Laid laid) {
    BandRow row = laid.layout().border().row();
    for (CurveTile tile : laid.tiles().stream().filter(tile -> tile.piece() != BorderPiece.WEDGE).toList()) {
      Vec start = tile.placed().of(new Vec(0, row.width() / 2));
      Vec end = tile.placed().of(new Vec(row.length(), row.width() / 2));
      boolean left = start.x() < laid.layout().border().curve().centre().x();
      assertEquals(left, end.y() > start.y());
      double longer = tile.piece() == BorderPiece.CUT ? 0 : (laid.layout().legTile() - row.length()) / 2;
      assertEquals(tile.face().box().maxY() - longer, Math.max(start.y(), end.y()), 1e-6);
    }
  }

  /**
   * By the joint alone, every number of pieces: the joint of n pieces is 2R sin(pi/n - a/2R) at the middle radius R.
   */
  @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
  void circlesCloseByTheJointWhenTheyCan(@ForAll("circles") double[] circle) throws InputException {
    double middle = circle[0] - 20;
    boolean closes = IntStream.range(3, 200).mapToDouble(n -> 2 * middle * Math.sin(Math.PI / n - circle[1] / (2 * middle)))
        .anyMatch(joint -> joint >= 2 && joint <= 4);
    CurveBorder border = new CurveBorder(Curve.circle(Vec.ZERO, circle[0]), BandRow.of(circle[1], 40, 1),
        new JointRange(2, 3, 4), Permits.NONE);
    assertEquals(closes, !CurveSolver.solve(border, LengthUnit.MILLIMETRE).layouts().isEmpty());
  }

  private static String kind(Curve curve) {
    return curve.full() ? "circle" : !curve.legs() ? "arc" : curve.halfAngle() == Math.PI / 2 ? "arch" : "flat arch";
  }

  @Provide
  Arbitrary<double[]> circles() {
    return Combinators.combine(Arbitraries.doubles().between(150, 900), Arbitraries.doubles().between(30, 120))
        .as((radius, tile) -> new double[] {radius, tile});
  }
}
