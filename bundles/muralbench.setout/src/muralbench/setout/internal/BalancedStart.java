// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.bond.Pattern.Run;

/**
 * Finds where rows of tiles start between two edges so that opposite cuts are equal and no edge cut is under half a tile
 * where that is possible, else so that the smallest cut is as wide as can be. No tile edge may fall short of the panel's
 * edge, since no gap was asked for.
 *
 * <p>The rule is ANSI A108.02 §4.3.1 and §4.3.2 as quoted in the trade press: centre and balance tiled areas, normally no
 * cut smaller than half a tile. The search is exact: as the start moves, every edge cut grows or shrinks evenly, so the
 * best start is one where two cuts are equal or where a tile is flush with an edge; all such starts are tried.
 */
final class BalancedStart {
  /** Edges closer than this are flush, mm. */
  private static final double FLUSH = 1e-6;
  /** With more different rows than this only starts that balance a row with itself are tried. */
  private static final int MOST_PAIRED_RUNS = 40;

  private final double low;
  private final double high;
  private final List<Run> runs;

  private BalancedStart(double low, double high, List<Run> runs) {
    this.low = low;
    this.high = high;
    this.runs = runs;
  }

  /**
   * The shift to add to the start of every run, 0 up to the module of the first.
   *
   * @param low one edge, mm
   * @param high the other edge, above {@code low}
   * @param runs the rows that meet the edges, all with one module; at least one
   */
  static double between(double low, double high, List<Run> runs) {
    return new BalancedStart(low, high, runs).best();
  }

  private double best() {
    Score best = null;
    for (double start : candidates()) {
      Score score = score(start);
      if (best == null || score.betterThan(best)) {
        best = score;
      }
    }
    return best.start();
  }

  private List<Double> candidates() {
    List<Double> starts = new ArrayList<>();
    boolean all = runs.size() <= MOST_PAIRED_RUNS;
    for (int i = 0; i < runs.size(); i++) {
      Run run = runs.get(i);
      for (int k = all ? 0 : i; k <= (all ? runs.size() - 1 : i); k++) {
        double equalCuts = (low + high - run.start() - runs.get(k).start() - run.face()) / 2;
        starts.add(equalCuts);
        starts.add(equalCuts + run.module() / 2);
      }
      starts.add(low - run.start());
      starts.add(high - run.start() - run.face());
    }
    double module = runs.get(0).module();
    starts.replaceAll(start -> start - Math.floor(start / module) * module);
    return starts;
  }

  private Score score(double start) {
    double gap = 0;
    double smallest = Double.POSITIVE_INFINITY;
    boolean equal = true;
    boolean half = true;
    int cuts = 0;
    for (Run run : runs) {
      double into = fromFaceStart(low - run.start() - start, run.module());
      double before = fromFaceStart(run.start() + start + run.face() - high, run.module());
      double left = visible(into, run);
      double right = visible(before, run);
      gap = Math.max(gap, Math.max(gap(into, run), gap(before, run)));
      smallest = Math.min(smallest, Math.min(left, right));
      equal &= Math.abs(left - right) < FLUSH;
      half &= Math.min(left, right) >= run.face() / 2 - FLUSH;
      cuts += (into < FLUSH ? 0 : 1) + (before < FLUSH ? 0 : 1);
    }
    return new Score(start, gap, equal, half, smallest, cuts);
  }

  /** How far an edge lies beyond the start of the face it meets, 0 up to the module; 0 when it is flush. */
  private static double fromFaceStart(double distance, double module) {
    double into = distance - Math.floor(distance / module) * module;
    return module - into < FLUSH ? 0 : into;
  }

  private static double visible(double into, Run run) {
    return into < run.face() ? run.face() - into : run.face();
  }

  private static double gap(double into, Run run) {
    return into > run.face() - FLUSH && into > FLUSH ? run.module() - into : 0;
  }

  private record Score(double start, double gap, boolean equal, boolean half, double smallest, int cuts) {
    boolean betterThan(Score other) {
      if (Math.abs(gap - other.gap) > FLUSH) {
        return gap < other.gap;
      }
      if ((equal && half) != (other.equal && other.half)) {
        return equal && half;
      }
      if (Math.abs(smallest - other.smallest) > FLUSH) {
        return smallest > other.smallest;
      }
      if (cuts != other.cuts) {
        return cuts < other.cuts;
      }
      return equal && !other.equal;
    }
  }
}
