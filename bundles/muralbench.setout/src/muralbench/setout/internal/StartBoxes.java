// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Predicate;
import muralbench.setout.bond.Pattern.Repeat;
import muralbench.setout.geometry.Vec;

/**
 * Looks for the start with the widest smallest cut among all starts of a pattern that repeats, by bounds: the starts are
 * parted in ever smaller boxes, and a box is given up when a piece that all its starts have is too narrow in all of them.
 * A width changes by no more than the start is moved, up and along added where edges are not square to the faces.
 */
final class StartBoxes {
  /** After so many faces no more boxes are looked at; only walls whose edges cut thousands of tiles come to that. */
  private static final int MOST_LOOKS = 150_000;
  private static final double EXACT = 1e-6;
  private static final int CURVED_STEPS = 64;

  /** Boxes are not parted below this reach, mm. */
  private final double finest;
  /** What may be missed, mm. */
  private final double tolerance;

  private final StartTrial trial;
  private final Predicate<Vec> allowed;
  private final boolean square;
  private final Vec along;
  private final Vec across;
  private Vec best;
  private double widest;

  /** Starts at s along + t across, s and t by up to {@code a} and {@code b} around a middle. */
  private record Part(double s, double t, double a, double b, double bound) {}

  /**
   * A search.
   *
   * @param square whether all edges run along the sides of the faces
   * @param allowed starts that may be chosen
   */
  StartBoxes(StartTrial trial, Repeat repeat, boolean square, double tolerance, double finest,
      Predicate<Vec> allowed) {
    this.trial = trial;
    this.allowed = allowed;
    this.square = square;
    this.tolerance = tolerance;
    this.finest = finest;
    Vec one = repeat.along();
    Vec other = repeat.across();
    while (true) {
      if (other.length() < one.length()) {
        Vec swapped = one;
        one = other;
        other = swapped;
      }
      double times = Math.rint(one.dot(other) / one.dot(one));
      if (times == 0) {
        break;
      }
      other = other.minus(one.times(times));
    }
    along = one;
    across = other;
  }

  /** The widest smallest cut that was found, mm. */
  double widest() {
    return widest;
  }

  /** The best start, beginning with one that is known and its smallest cut; no wider cut than {@code most} is looked for. */
  Vec best(Vec known, double width, double most) {
    best = known;
    widest = width;
    PriorityQueue<Part> parts = new PriorityQueue<>(Comparator.comparingDouble(Part::bound).reversed());
    parts.add(new Part(0.5, 0.5, 0.5, 0.5, most));
    long last = trial.looks() + MOST_LOOKS;
    while (!parts.isEmpty() && trial.looks() < last && parts.peek().bound() > widest + tolerance && widest < most) {
      part(parts.remove(), parts);
    }
    if (best != null && widest < most && trial.looks() < last) {
      climb();
    }
    return best;
  }

  /** Goes on from the best start in ever smaller steps, as long as the smallest cut grows. */
  private void climb() {
    for (double step = finest; step > (square ? EXACT : finest / CURVED_STEPS); step /= 2) {
      double before;
      do {
        before = widest;
        for (int way = 0; way < 9; way++) {
          Vec there = best.plus(new Vec((way % 3 - 1) * step, (way / 3 - 1) * step));
          take(there, trial.smallest(there, widest + EXACT));
        }
      } while (widest > before + step / 2);
    }
  }

  private void part(Part part, PriorityQueue<Part> parts) {
    Vec middle = along.times(part.s()).plus(across.times(part.t()));
    double right = Math.abs(along.x()) * part.a() + Math.abs(across.x()) * part.b();
    double up = Math.abs(along.y()) * part.a() + Math.abs(across.y()) * part.b();
    double reach = square ? Math.max(right, up) : right + up;
    double bound = part.bound();
    if (2 * reach >= widest + tolerance) {
      // Too many starts at once: no piece can spoil them all.
      take(middle, trial.smallest(middle, widest));
    } else if (trial.probe(middle, reach, widest + tolerance)) {
      bound = Math.min(bound, trial.bound());
      take(middle, trial.found());
      if (square && reach <= finest) {
        for (Vec shift : List.of(trial.flush(), new Vec(trial.flush().x(), 0), new Vec(0, trial.flush().y()))) {
          take(middle.plus(shift), trial.smallest(middle.plus(shift), widest + EXACT));
        }
      }
    } else {
      return;
    }
    if (reach > finest) {
      boolean longer = part.a() * along.length() > part.b() * across.length();
      double a = longer ? part.a() / 2 : part.a();
      double b = longer ? part.b() : part.b() / 2;
      for (int sign = -1; sign <= 1; sign += 2) {
        parts.add(new Part(part.s() + (longer ? sign * a : 0), part.t() + (longer ? 0 : sign * b), a, b, bound));
      }
    }
  }

  private void take(Vec at, double width) {
    if (width > widest && allowed.test(at)) {
      widest = width;
      best = at;
    }
  }
}
