// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.setout.geometry.Box;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;

/** The solver against every pair of numbers of tiles, in exact fractions; lengths in 64ths of an inch. */
class ClosingProperties {
  private static final double UNIT = 25.4 / 64;

  /** Half of the bands are made to close by a joint, the others are a few 64ths off. */
  @Provide
  Arbitrary<BruteForce> bands() {
    Arbitrary<Integer> off = Arbitraries.frequencyOf(Tuple.of(3, Arbitraries.just(0)),
        Tuple.of(2, Arbitraries.integers().between(-40, 40)));
    return Combinators.combine(Arbitraries.integers().between(64, 420), Arbitraries.integers().between(64, 420),
        Arbitraries.integers().between(1, 3), Arbitraries.integers().between(1, 9), Arbitraries.integers().between(1, 7),
        Arbitraries.integers().between(2, 14), off, off).as((tile, corner, repeat, m, n, joint, more, less) -> {
          long across = 2L * corner + m * repeat * (tile + joint) + joint + more;
          long up = 2L * corner + n * repeat * (tile + joint) + joint + less;
          return new BruteForce(across, up, tile, corner, repeat, 4, 12, 0, 0, Fraction.of(0));
        });
  }

  @Property(tries = 4000, edgeCases = EdgeCasesMode.NONE)
  void theJointAloneClosesWhatItCan(@ForAll("bands") BruteForce brute) {
    List<Fraction> joints = brute.joints();
    List<BandLayout> layouts = layouts(brute, Permits.NONE);
    Statistics.collect(joints.isEmpty() ? "does not close" : "closes");
    assertEquals(Math.min(3, joints.size()), layouts.size());
    List<Double> expected = joints.stream().map(joint -> Math.abs(joint.value() - 8)).sorted().limit(3).toList();
    for (int i = 0; i < layouts.size(); i++) {
      assertEquals(expected.get(i), Math.abs(layouts.get(i).joint() / UNIT - 8), 1e-7);
    }
  }

  @Property(tries = 2000, edgeCases = EdgeCasesMode.NONE)
  void jointAndMoveCloseWhatTheyCan(@ForAll("bands") BruteForce brute) {
    BruteForce moved = new BruteForce(brute.width(), brute.height(), brute.tile(), brute.corner(), brute.repeat(), 4, 12, 24,
        16, Fraction.of(0));
    boolean closes = moved.closes();
    Statistics.collect(closes);
    assertEquals(closes, !layouts(moved, Permits.NONE.move(24 * UNIT, 16 * UNIT)).isEmpty());
  }

  @Property(tries = 2000, edgeCases = EdgeCasesMode.NONE)
  void jointMoveAndScaleCloseWhatTheyCan(@ForAll("bands") BruteForce brute) {
    BruteForce scaled = new BruteForce(brute.width(), brute.height(), brute.tile(), brute.corner(), brute.repeat(), 4, 12, 12,
        12, Fraction.of(1, 64));
    boolean closes = scaled.closes();
    Statistics.collect(closes);
    assertEquals(closes, !layouts(scaled, Permits.NONE.move(12 * UNIT, 12 * UNIT).scale(1 / 64.0)).isEmpty());
  }

  @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
  void endCutsCloseWhatTheyCan(@ForAll("bands") BruteForce brute) {
    Fraction twoTiles = Fraction.of(2 * brute.tile());
    boolean closes = brute.closesWithRest(twoTiles.times(Fraction.of(3, 4)), twoTiles, 2, brute::window);
    Statistics.collect(closes);
    assertEquals(closes, !layouts(brute, Permits.NONE.ends(0.75)).isEmpty());
  }

  @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
  void centrePiecesCloseWhatTheyCan(@ForAll("bands") BruteForce brute) {
    boolean closes = brute.closesWithRest(Fraction.of(64), Fraction.of(128), 1,
        tiles -> tiles % (2 * brute.repeat()) == 0);
    Statistics.collect(closes);
    assertEquals(closes, !layouts(brute, Permits.NONE.centre(64 * UNIT, 128 * UNIT)).isEmpty());
  }

  /** By the half-tile rule: ends of at least half a tile less half a joint always close, whatever the repeat of one. */
  @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
  void theHalfTileRuleAlwaysCloses(@ForAll("bands") BruteForce brute) {
    BruteForce single = new BruteForce(brute.width() + 4 * brute.tile(), brute.height() + 4 * brute.tile(), brute.tile(),
        brute.corner(), 1, 8, 8, 0, 0, Fraction.of(0));
    double share = 0.5 - 8.0 / (2 * brute.tile());
    BandLayout best = layouts(single, Permits.NONE.ends(share)).get(0);
    assertEquals(8 * UNIT, best.joint(), 1e-9);
    for (RunLayout run : best.runs()) {
      assertTrue(run.end() == 0 || run.end() >= share * run.tile() - 1e-6);
    }
  }

  @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
  void everyLayoutKeepsWhatIsPermitted(@ForAll("bands") BruteForce brute) {
    Permits permits = Permits.NONE.move(20 * UNIT, 10 * UNIT).scale(0.02).centre(40 * UNIT, 200 * UNIT).ends(0.6);
    for (BandLayout layout : layouts(brute, permits)) {
      assertTrue(layout.relativeResidual() <= 1e-9);
      within(4 * UNIT, layout.joint(), 12 * UNIT);
      within(-10 * UNIT, layout.move(), 20 * UNIT);
      within(0.98, layout.scale(), 1.02);
      for (RunLayout run : layout.runs()) {
        assertEquals(layout.run(0, (run.side() + 2) % 4).pieces(), run.pieces());
        int repeat = (int) brute.repeat();
        assertEquals(run.whole(), run.repeats() * repeat + 2 * run.outside(repeat));
        within(0, run.outside(repeat), run.end() == 0 ? 0 : repeat - 1);
        within(run.end() == 0 ? 0 : 0.6 * run.tile(), run.end(), run.tile());
        within(run.centre() == 0 ? 0 : 40 * UNIT, run.centre(), 200 * UNIT);
      }
    }
  }

  @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
  void harmGrowsAndTheWorstMeansDecides(@ForAll("bands") BruteForce brute) {
    Permits permits = Permits.NONE.move(20 * UNIT, 10 * UNIT).scale(0.02).centre(40 * UNIT, 200 * UNIT).ends(0.6);
    double before = -1;
    for (BandLayout layout : layouts(brute, permits)) {
      assertTrue(layout.harm() >= before);
      assertEquals(layout.means().stream().mapToInt(Means::weight).sum(), (int) layout.harm());
      before = layout.harm();
    }
  }

  /** What would work instead is the nearest that works: the shortest move with any joint in range. */
  @Property(tries = 1500, edgeCases = EdgeCasesMode.NONE)
  void theHintIsTheNearestMove(@ForAll("bands") BruteForce brute) {
    long limit = brute.tile() / 2;
    double least = brute.leastMove(limit);
    Border border = border(brute, Permits.NONE.move(limit * UNIT, limit * UNIT));
    Found nearest = new ClosingSearch(border, ClosingSolver.classes(border), 1, new ClosingSearch.Aim(Scope.MOVE),
        found -> true).nearest();
    Statistics.collect(Double.isNaN(least) ? "none" : "moved");
    assertEquals(Double.isNaN(least), nearest == null);
    assertEquals(Math.abs(least), nearest == null ? Double.NaN : Math.abs(nearest.move() / UNIT), 1e-5);
  }

  /** A band made from known numbers closes, and by nothing worse than those. */
  @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
  void aBandMadeToCloseCloses(@ForAll("made") double[] n) {
    double joint = 4 + n[0];
    double tile = 200 * (1 + n[1]);
    double move = n[2];
    double across = 2 * (100 + move) + 2 * n[3] * tile + 60 + (2 * n[3] + 2) * joint;
    double up = 2 * (100 + move) + n[4] * tile + 2 * n[5] * tile + (n[4] + 3) * joint;
    Border border = Border.of(BandPath.rectangle(new Box(0, 0, across * UNIT, up * UNIT)),
        new BandRow(200 * UNIT, 100 * UNIT, 100 * UNIT, 1, false), Corner.TURNED,
        new JointRange(4 * UNIT, 8 * UNIT, 12 * UNIT),
        Permits.NONE.move(10 * UNIT, 10 * UNIT).scale(0.03).centre(50 * UNIT, 70 * UNIT).ends(0.5));
    BandLayout best = Bands.best(border);
    assertTrue(best.harm() < 32);
    assertTrue(best.relativeResidual() <= 1e-9);
  }

  @Provide
  Arbitrary<double[]> made() {
    return Combinators.combine(Arbitraries.doubles().between(0, 8), Arbitraries.doubles().between(-0.03, 0.03),
        Arbitraries.doubles().between(-10, 10), Arbitraries.integers().between(1, 9), Arbitraries.integers().between(1, 12),
        Arbitraries.doubles().between(0.5, 1)).as((joint, scale, move, m, n, end) ->
            new double[] {joint, scale, move, m, n, end});
  }

  private static void within(double low, double value, double high) {
    assertTrue(value >= low - 1e-6 && value <= high + 1e-6, () -> low + " <= " + value + " <= " + high);
  }

  private static Border border(BruteForce brute, Permits permits) {
    BandPath path = BandPath.rectangle(new Box(0, 0, brute.width() * UNIT, brute.height() * UNIT));
    double corner = brute.corner() * UNIT;
    BandRow row = new BandRow(brute.tile() * UNIT, Math.min(corner, 16 * UNIT), corner, (int) brute.repeat(), false);
    JointRange joint = new JointRange(brute.min() * UNIT, (brute.min() + brute.max()) / 2.0 * UNIT, brute.max() * UNIT);
    return Border.of(path, row, Corner.TILE, joint, permits);
  }

  private static List<BandLayout> layouts(BruteForce brute, Permits permits) {
    try {
      return ClosingSolver.solve(border(brute, permits), LengthUnit.INCH).layouts();
    } catch (InputException refused) {
      // Only what has no room for one repeat is refused; that closes in no other way either.
      assertTrue(refused.place().startsWith("/sides/"), refused.getMessage());
      return List.of();
    }
  }
}
