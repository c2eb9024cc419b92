// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.List;
import muralbench.pattern.border.ClosingSearch.Aim;

/** States the closing of given pieces as a {@link LeastHarm} programme in the unknowns that a scope uses. */
final class Programme {
  /** A tile that lacks no more than this is whole, mm. */
  private static final double UNCUT = 1e-6;

  private final Scope scope;
  private final Aim aim;
  private final List<Integer> used = new ArrayList<>();
  private final LeastHarm harm;
  private int parts;

  /** A programme; without an aim it only asks whether anything is possible. */
  private Programme(Scope scope, Aim aim) {
    this.scope = scope;
    this.aim = aim;
    for (int unknown = 0; unknown <= Scope.MOVE; unknown++) {
      if (scope.uses(unknown)) {
        used.add(unknown);
      }
    }
    harm = new LeastHarm(used.size());
  }

  /** Whether some joint, stretch and move in range close these classes, whatever the others are made of. */
  static boolean possible(Scope scope, Choice[] choices) {
    Programme programme = new Programme(scope, null);
    programme.limits();
    for (Choice choice : choices) {
      programme.close(choice);
    }
    return programme.harm.best() != null;
  }

  /** The way to close with these pieces, or null if there is none or one of the unknowns is not needed. */
  static Found solve(Scope scope, Choice[] choices, int count, Aim aim, double unused) {
    Programme programme = new Programme(scope, aim);
    programme.limits();
    for (Choice choice : choices) {
      programme.close(choice);
    }
    LeastHarm.Point point = programme.harm.best();
    return point == null ? null : programme.found(point, List.of(choices), count, unused);
  }

  private Found found(LeastHarm.Point point, List<Choice> choices, int count, double unused) {
    double[] all = new double[Scope.MOVE + 1];
    for (int i = 0; i < used.size(); i++) {
      if (Math.abs(point.at()[i]) < unused) {
        return null;
      }
      all[used.get(i)] = point.at()[i];
    }
    if (choices.stream().anyMatch(choice -> uncut(choice, all))) {
      return null;
    }
    double amount = parts == 0 ? 0 : Math.min(point.sum() / parts, 1);
    return new Found(scope.mask(), count, amount, choices, scope.border().joint().preferred() + all[Scope.JOINT],
        1 + all[Scope.STRETCH] / scope.tile(), all[Scope.MOVE]);
  }

  /** Whether the end tiles would be whole, so that the run needs no cut. */
  private boolean uncut(Choice choice, double[] all) {
    RunClass run = choice.run();
    if (!choice.ends() || choice.centre() || !choice.nearlyWhole()) {
      return false;
    }
    double tile = run.tile() * (1 + all[Scope.STRETCH] / scope.tile());
    double joint = scope.border().joint().preferred() + all[Scope.JOINT];
    return choice.rest(joint, tile, all[Scope.MOVE]) >= 2 * tile - UNCUT;
  }

  private void limits() {
    for (int i = 0; i < used.size(); i++) {
      int unknown = used.get(i);
      double[] unit = new double[used.size()];
      unit[i] = 1;
      double low = scope.low(unknown);
      double high = scope.high(unknown);
      harm.between(unit, low, high);
      if (aim != null) {
        distance(unit, 0, aim.weight(unknown) / Math.max(UNCUT, Math.max(-low, high)));
      }
    }
  }

  private void distance(double[] coefficients, double at, double weight) {
    harm.distance(coefficients, at, weight);
    parts++;
  }

  private void close(Choice choice) {
    RunClass run = choice.run();
    double rest = choice.rest(scope.border().joint().preferred(), run.tile(), 0);
    double ratio = run.tile() / scope.tile();
    double[] change = coefficients(choice.joints(), choice.whole() * ratio, run.shrink());
    if (run.leastEnd() > 0) {
      harm.between(coefficients(0, ratio, 0), run.leastEnd() - run.tile(), Double.POSITIVE_INFINITY);
    }
    if (choice.free()) {
      free(choice, rest, ratio, change);
    } else {
      harm.equal(change, rest, RunClass.EQUAL * run.length());
    }
  }

  /** The rest of the run is the centre piece and the two ends, each within its bounds. */
  private void free(Choice choice, double rest, double ratio, double[] change) {
    RunClass run = choice.run();
    Permits permits = scope.border().permits();
    double centreMin = choice.centre() ? permits.centreMin() : 0;
    double centreMax = choice.centre() ? permits.centreMax() : 0;
    double middle = (centreMin + centreMax) / 2;
    if (!choice.ends()) {
      harm.between(change, rest - centreMax, rest - centreMin);
      if (aim != null && centreMax > centreMin) {
        distance(change, rest - middle, 2 * aim.freedom() / (centreMax - centreMin));
      }
      return;
    }
    double share = permits.endShare();
    double tile = run.tile();
    harm.between(plus(change, 2 * share * ratio), Double.NEGATIVE_INFINITY, rest - centreMin - 2 * share * tile);
    harm.between(plus(change, 2 * ratio), rest - centreMax - 2 * tile, Double.POSITIVE_INFINITY);
    if (run.leastEnd() > 0) {
      harm.between(change, Double.NEGATIVE_INFINITY, rest - centreMin - 2 * run.leastEnd());
    }
    if (aim != null) {
      distance(change, rest - middle - 2 * tile, aim.freedom() / (2 * tile));
    }
  }

  private double[] plus(double[] coefficients, double stretch) {
    double[] sum = coefficients.clone();
    int at = used.indexOf(Scope.STRETCH);
    if (at >= 0) {
      sum[at] += stretch;
    }
    return sum;
  }

  private double[] coefficients(double joint, double stretch, double move) {
    double[] all = {joint, stretch, move};
    return used.stream().mapToDouble(unknown -> all[unknown]).toArray();
  }
}
