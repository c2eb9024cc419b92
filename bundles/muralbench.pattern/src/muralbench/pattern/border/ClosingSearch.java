// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Finds the ways to close the rows that show a motif, least harm first. It tries the sets of means from the least weight
 * upwards; in each, the classes of runs that get a centre piece or cut ends, fewest first; in each, all numbers of whole
 * tiles that the ranges leave room for. What is left are the joint, the stretch and the move, a {@link LeastHarm} programme.
 */
final class ClosingSearch {
  /** Room for rounding when numbers of tiles are counted; {@link LeastHarm} decides. */
  private static final double LOOSE = 1e-6;
  /** An unknown nearer to 0 than this is not used, mm. */
  private static final double UNUSED = 1e-9;

  private final Border border;
  private final List<RunClass> classes;
  private final int most;
  private final Predicate<Found> fits;
  private final Aim aim;
  private final List<Found> found = new ArrayList<>();

  /** What is to be kept least: all changes alike, or above all one unknown. */
  record Aim(int first) {
    static final Aim ALL = new Aim(-1);

    double weight(int unknown) {
      return first < 0 || unknown == first ? 1 : 1e-4;
    }

    double freedom() {
      return first < 0 ? 1 : 1e-4;
    }
  }

  /**
   * A search.
   *
   * @param most how many ways to find at most
   * @param fits whether a way can be laid, asked at last
   */
  ClosingSearch(Border border, List<RunClass> classes, int most, Aim aim, Predicate<Found> fits) {
    this.border = border;
    this.classes = classes.stream().sorted(Comparator.comparingDouble(RunClass::length).reversed()).toList();
    this.most = most;
    this.aim = aim;
    this.fits = fits;
  }

  /** The ways found, the least harm first. */
  List<Found> best() {
    int permitted = Scope.permitted(border);
    for (int mask = 0; mask <= permitted && found.size() < most; mask++) {
      if ((mask & permitted) == mask) {
        search(mask);
      }
    }
    return found;
  }

  /** The nearest way by the unknown that is aimed at, whatever other means it takes; null if there is none. */
  Found nearest() {
    int permitted = Scope.permitted(border);
    Found best = null;
    for (int mask = 0; mask <= permitted; mask++) {
      if ((mask & permitted) == mask) {
        found.clear();
        search(mask);
        for (Found one : found) {
          best = best == null || distance(one) < distance(best) - LOOSE ? one : best;
        }
      }
    }
    return best;
  }

  private double distance(Found one) {
    return Math.abs(switch (aim.first()) {
      case Scope.JOINT -> one.joint() - border.joint().preferred();
      case Scope.STRETCH -> (one.scale() - 1) * classes.get(0).tile();
      default -> one.move();
    });
  }

  private void search(int mask) {
    List<Means[][]> plans = plans(mask);
    int count = -1;
    List<Found> level = new ArrayList<>();
    for (Means[][] plan : plans) {
      if (count(plan) != count) {
        keep(level);
        if (found.size() >= most) {
          return;
        }
        level = new ArrayList<>();
        count = count(plan);
      }
      new Descent(new Scope(border, mask, classes.get(0).tile()), plan, count, level).run();
    }
    keep(level);
  }

  private void keep(List<Found> level) {
    level.sort(Comparator.comparingDouble(Found::amount));
    for (Found one : level) {
      if (found.size() < most && found.stream().noneMatch(one::outdoneBy) && fits.test(one)) {
        found.add(one);
      }
    }
  }

  private static int count(Means[][] plan) {
    return Arrays.stream(plan).mapToInt(means -> means.length).sum();
  }

  /** All ways to share the centre pieces and cut ends of a mask out over the classes, fewest first, each means used. */
  private List<Means[][]> plans(int mask) {
    List<Means[]> options = new ArrayList<>();
    options.add(new Means[0]);
    boolean centre = Means.CENTRE.in(mask);
    boolean ends = Means.ENDS.in(mask);
    if (centre) {
      options.add(new Means[] {Means.CENTRE});
    }
    if (ends) {
      options.add(new Means[] {Means.ENDS});
    }
    if (centre && ends) {
      options.add(new Means[] {Means.CENTRE, Means.ENDS});
    }
    List<Means[][]> plans = new ArrayList<>();
    plan(options, new Means[classes.size()][], 0, plans);
    plans.removeIf(plan -> centre && !has(plan, Means.CENTRE) || ends && !has(plan, Means.ENDS));
    plans.sort(Comparator.comparingInt(ClosingSearch::count));
    return plans;
  }

  private void plan(List<Means[]> options, Means[][] plan, int depth, List<Means[][]> plans) {
    if (depth == plan.length) {
      plans.add(plan.clone());
      return;
    }
    for (Means[] option : options) {
      plan[depth] = option;
      plan(options, plan, depth + 1, plans);
    }
  }

  private static boolean has(Means[][] plan, Means means) {
    return Arrays.stream(plan).anyMatch(own -> Arrays.asList(own).contains(means));
  }

  /** Tries the numbers of whole tiles of one plan, class by class, the ones with no freedom first. */
  private final class Descent {
    private final Scope scope;
    private final Means[][] plan;
    private final int count;
    private final List<Found> level;
    private final Integer[] order;
    private final Choice[] choices = new Choice[classes.size()];
    private final double[] lowModule = new double[border.rows().size()];
    private final double[] highModule = new double[border.rows().size()];

    Descent(Scope scope, Means[][] plan, int count, List<Found> level) {
      this.scope = scope;
      this.plan = plan;
      this.count = count;
      this.level = level;
      order = new Integer[classes.size()];
      Arrays.setAll(order, i -> i);
      Arrays.sort(order, Comparator.comparingInt((Integer i) -> plan[i].length));
      for (RunClass run : classes) {
        lowModule[run.row()] = scope.lowTile(run) + scope.lowJoint();
        highModule[run.row()] = scope.highTile(run) + scope.highJoint();
      }
    }

    void run() {
      descend(0);
    }

    private void descend(int depth) {
      if (depth == order.length) {
        Found leaf = Programme.solve(scope, choices, count, aim, UNUSED);
        if (leaf != null) {
          level.add(leaf);
        }
        return;
      }
      int index = order[depth];
      RunClass run = classes.get(index);
      boolean centre = Arrays.asList(plan[index]).contains(Means.CENTRE);
      boolean ends = Arrays.asList(plan[index]).contains(Means.ENDS);
      double[] span = span(run, centre, ends);
      double low = lowModule[run.row()];
      double high = highModule[run.row()];
      int step = run.repeat() * (centre ? 2 : 1);
      long from = Math.max(1, (long) Math.ceil((span[0] / high - LOOSE) / step));
      long to = (long) Math.floor((span[1] / low + LOOSE) / step);
      for (long n = from; n <= to; n++) {
        int whole = (int) (n * step);
        choices[index] = new Choice(run, whole, centre, ends);
        lowModule[run.row()] = Math.max(low, span[0] / whole - LOOSE);
        highModule[run.row()] = Math.min(high, span[1] / whole + LOOSE);
        descend(depth + 1);
      }
      lowModule[run.row()] = low;
      highModule[run.row()] = high;
    }

    /** The least and the most that whole tiles with a joint each may take up, mm. */
    private double[] span(RunClass run, boolean centre, boolean ends) {
      Choice none = new Choice(run, 0, centre, ends);
      Permits permits = border.permits();
      double least = (centre ? permits.centreMin() : 0)
          + (ends ? 2 * Math.max(permits.endShare() * scope.lowTile(run), run.leastEnd()) : 0);
      double largest = (centre ? permits.centreMax() : 0) + (ends ? 2 * scope.highTile(run) : 0);
      double joints = none.joints();
      double room1 = run.room(scope.low(Scope.MOVE));
      double room2 = run.room(scope.high(Scope.MOVE));
      double taken1 = joints * scope.lowJoint();
      double taken2 = joints * scope.highJoint();
      return new double[] {Math.min(room1, room2) - Math.max(taken1, taken2) - largest,
          Math.max(room1, room2) - Math.min(taken1, taken2) - least};
    }
  }
}
