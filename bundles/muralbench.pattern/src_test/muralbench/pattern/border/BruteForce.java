// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongPredicate;
import java.util.stream.LongStream;

/**
 * Closes rectangles with a corner tile by trying every pair of numbers of tiles in exact fractions. Lengths in units
 * of 1/64 in; nothing here is shared with the solver.
 */
record BruteForce(long width, long height, long tile, long corner, long repeat, long min, long max, long in, long out,
    Fraction scale) {
  /** A joint for each pair of numbers of tiles that closes by the joint alone. */
  List<Fraction> joints() {
    List<Fraction> joints = new ArrayList<>();
    for (long m = repeat; m * tile <= width; m += repeat) {
      for (long n = repeat; n * tile <= height; n += repeat) {
        Fraction joint = Fraction.of(width - 2 * corner - m * tile, m + 1);
        if (joint.equals(Fraction.of(height - 2 * corner - n * tile, n + 1)) && joint.within(low(), high())) {
          joints.add(joint);
        }
      }
    }
    return joints;
  }

  /** Whether any joint, stretch and move in range close some pair of numbers of tiles. */
  boolean closes() {
    long smallest = Math.max(1, (long) Math.floor(tile * (1 - scale.value())));
    for (long m = repeat; m * smallest <= width + 2 * out; m += repeat) {
      for (long n = repeat; n * smallest <= height + 2 * out; n += repeat) {
        if (m == n ? width == height && oneEquation(m) : twoEquations(m, n)) {
          return true;
        }
      }
    }
    return false;
  }

  /** The shortest move, either way, with which some joint in range closes; NaN if none up to a limit does. */
  double leastMove(long limit) {
    double least = Double.NaN;
    for (long m = repeat; m * tile <= width + 2 * limit; m += repeat) {
      for (long n = repeat; n * tile <= height + 2 * limit; n += repeat) {
        double move = m == n ? width == height ? moveOfBoth(m) : Double.NaN : moveOf(m, n);
        least = Math.abs(move) <= limit && !(Math.abs(least) <= Math.abs(move)) ? move : least;
      }
    }
    return least;
  }

  private double moveOfBoth(long n) {
    double least = (width - 2 * corner - n * tile - (n + 1) * max) / 2.0;
    double most = (width - 2 * corner - n * tile - (n + 1) * min) / 2.0;
    return least > 0 ? least : Math.min(most, 0);
  }

  private double moveOf(long m, long n) {
    Fraction joint = Fraction.of(width - height, m - n).minus(Fraction.of(tile));
    Fraction move = Fraction.of(width - 2 * corner - m * tile).minus(Fraction.of(m + 1).times(joint));
    return joint.within(low(), high()) ? move.value() / 2 : Double.NaN;
  }

  /** Both sides ask for the same: is the length between what all of the least and all of the most take up? */
  private boolean oneEquation(long n) {
    Fraction rest = Fraction.of(width - 2 * corner);
    return rest.within(taken(n, min, lowTile(), -out), taken(n, max, highTile(), in));
  }

  private static Fraction taken(long n, long joint, Fraction tile, long move) {
    return Fraction.of(n).times(tile).plus(Fraction.of((n + 1) * joint + 2 * move));
  }

  /**
   * Joint and move follow from the tile's length t: the difference of the sides is (m - n) (t + j), and one side
   * gives the move. Both are linear in t, so each bound is an interval of t.
   */
  private boolean twoEquations(long m, long n) {
    Fraction module = Fraction.of(width - height, m - n);
    Fraction low = lowTile();
    Fraction high = highTile();
    // min <= module - t <= max
    low = greater(low, module.minus(high()));
    high = smaller(high, module.minus(low()));
    // 2 move = width - 2 corner - (m + 1) module + t
    Fraction constant = Fraction.of(width - 2 * corner).minus(Fraction.of(m + 1).times(module));
    low = greater(low, Fraction.of(-2 * out).minus(constant));
    high = smaller(high, Fraction.of(2 * in).minus(constant));
    return low.compareTo(high) <= 0;
  }

  /**
   * Whether any joint in range closes when a side may also hold a rest between two bounds, as so many pieces more:
   * the joint of each side is then one number or an interval.
   */
  boolean closesWithRest(Fraction least, Fraction most, long pieces, LongPredicate tiles) {
    for (Fraction[] across : intervals(width, least, most, pieces, tiles)) {
      for (Fraction[] up : intervals(height, least, most, pieces, tiles)) {
        if (greater(across[0], up[0]).compareTo(smaller(across[1], up[1])) <= 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether so many tiles are whole repeats, at least one, between fewer than a repeat at either end. */
  boolean window(long tiles) {
    return LongStream.range(0, repeat).map(m -> tiles - 2 * m).anyMatch(n -> n > 0 && n % repeat == 0);
  }

  private List<Fraction[]> intervals(long length, Fraction least, Fraction most, long pieces, LongPredicate tiles) {
    List<Fraction[]> all = new ArrayList<>();
    for (long n = 1; n * tile <= length; n++) {
      Fraction rest = Fraction.of(length - 2 * corner - n * tile);
      if (n % repeat == 0) {
        add(all, rest.over(Fraction.of(n + 1)), rest.over(Fraction.of(n + 1)));
      }
      if (tiles.test(n)) {
        Fraction joints = Fraction.of(n + 1 + pieces);
        add(all, rest.minus(most).over(joints), rest.minus(least).over(joints));
      }
    }
    return all;
  }

  private void add(List<Fraction[]> all, Fraction from, Fraction to) {
    Fraction[] both = {greater(from, low()), smaller(to, high())};
    if (both[0].compareTo(both[1]) <= 0) {
      all.add(both);
    }
  }

  private Fraction low() {
    return Fraction.of(min);
  }

  private Fraction high() {
    return Fraction.of(max);
  }

  private Fraction lowTile() {
    return Fraction.of(tile).times(Fraction.of(1).minus(scale));
  }

  private Fraction highTile() {
    return Fraction.of(tile).times(Fraction.of(1).plus(scale));
  }

  private static Fraction greater(Fraction a, Fraction b) {
    return a.compareTo(b) >= 0 ? a : b;
  }

  private static Fraction smaller(Fraction a, Fraction b) {
    return a.compareTo(b) <= 0 ? a : b;
  }
}
