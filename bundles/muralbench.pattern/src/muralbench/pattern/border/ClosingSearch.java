// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Finds the ways to close the rows that show a motif, least harm first. It tries the sets of means from the least
 * weight upwards; in each, what every class of runs may be made of and all numbers of whole tiles that the ranges
 * leave room for, and drops what cannot be completed. What is left are the joint, the stretch and the move, a {@link
 * LeastHarm} programme.
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
        double reach = best == null ? Double.POSITIVE_INFINITY : distance(best) - LOOSE;
        List<Found> nearer = new Descent(scope(mask).within(aim.first(), reach)).run();
        best = nearer.isEmpty() ? best : nearer.get(0);
      }
    }
    return best;
  }

  private Scope scope(int mask) {
    return new Scope(border, mask, classes.get(0).tile(), -1, Double.POSITIVE_INFINITY);
  }

  private double distance(Found one) {
    return Math.abs(switch (aim.first()) {
      case Scope.JOINT -> one.joint() - border.joint().preferred();
      case Scope.STRETCH -> (one.scale() - 1) * classes.get(0).tile();
      default -> one.move();
    });
  }

  private void search(int mask) {
    found.addAll(new Descent(scope(mask)).run());
  }

  /** Tries for one set of means what every class of runs may be made of, class by class, as far as the ranges go. */
  private final class Descent {
    private Scope scope;
    private final List<Found> kept = new ArrayList<>();
    private final Choice[] choices = new Choice[classes.size()];
    private final double[] lowModule = new double[border.rows().size()];
    private final double[] highModule = new double[border.rows().size()];

    Descent(Scope scope) {
      this.scope = scope;
      for (RunClass run : classes) {
        lowModule[run.row()] = scope.lowTile(run) + scope.lowJoint();
        highModule[run.row()] = scope.highTile(run) + scope.highJoint();
      }
    }

    List<Found> run() {
      descend(0, 0);
      return kept;
    }

    private void descend(int depth, int count) {
      if (aim.first() < 0 && kept.size() == most - found.size() && count > kept.get(kept.size() - 1).count()) {
        return;
      }
      if (depth == choices.length) {
        leaf(count);
      } else if (depth < 2 || Programme.possible(scope, Arrays.copyOf(choices, depth))) {
        tryAll(depth, count, false, false);
        boolean centre = Means.CENTRE.in(scope.mask());
        boolean ends = Means.ENDS.in(scope.mask());
        if (centre) {
          tryAll(depth, count + 1, true, false);
        }
        if (ends) {
          tryAll(depth, count + 1, false, true);
        }
        if (centre && ends) {
          tryAll(depth, count + 2, true, true);
        }
      }
    }

    private void leaf(int count) {
      boolean centre = Arrays.stream(choices).anyMatch(Choice::centre);
      boolean ends = Arrays.stream(choices).anyMatch(Choice::ends);
      if (centre != Means.CENTRE.in(scope.mask()) || ends != Means.ENDS.in(scope.mask())) {
        return;
      }
      Found leaf = Programme.solve(scope, choices, count, aim, UNUSED);
      if (leaf == null || found.stream().anyMatch(leaf::outdoneBy) || !fits.test(leaf)) {
        return;
      }
      kept.add(leaf);
      if (aim.first() < 0) {
        kept.sort(Comparator.comparingInt(Found::count).thenComparingDouble(Found::amount));
      } else {
        kept.sort(Comparator.comparingDouble(ClosingSearch.this::distance));
        scope = scope.within(aim.first(), distance(kept.get(0)));
      }
      if (kept.size() > most - found.size()) {
        kept.remove(kept.size() - 1);
      }
    }

    private void tryAll(int depth, int count, boolean centre, boolean ends) {
      RunClass run = classes.get(depth);
      double[] span = span(run, centre, ends);
      double low = lowModule[run.row()];
      double high = highModule[run.row()];
      int from = Math.max(1, (int) Math.ceil(span[0] / high - LOOSE));
      int to = (int) Math.floor(span[1] / low + LOOSE);
      for (int whole = from; whole <= to; whole++) {
        choices[depth] = new Choice(run, whole, centre, ends);
        if (choices[depth].outside() >= 0) {
          lowModule[run.row()] = Math.max(low, span[0] / whole - LOOSE);
          highModule[run.row()] = Math.min(high, span[1] / whole + LOOSE);
          descend(depth + 1, count);
        }
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
