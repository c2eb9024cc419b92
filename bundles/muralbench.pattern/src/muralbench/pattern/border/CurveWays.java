// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/**
 * All ways to close a band on a curve. The joint is the one that closes the legs, or without legs any in range; the
 * pieces of the curve then are as long as the tile, or the band moves until they are, or they are made a little
 * longer or shorter.
 */
final class CurveWays {
  private static final int STEPS = 16;
  private static final double EXACT = 1e-9;

  private final CurveBorder border;
  private final double tile;
  private final List<CurveLayout> ways = new ArrayList<>();

  /** What the legs ask for when the band is moved by some way; null where they do not close. */
  private interface Legs {
    Leg at(double move);
  }

  /** Joint, tile and foot of the legs, mm. */
  private record Leg(double joint, double tile, double foot) {}

  private CurveWays(CurveBorder border) {
    this.border = border;
    tile = border.row().length();
  }

  /** The ways, the least harm first; of those with the same pieces only the ones that take the fewest means. */
  static List<CurveLayout> of(CurveBorder border) {
    CurveWays search = new CurveWays(border);
    int repeat = border.row().repeat();
    for (int count = search.fewest(); count <= search.most(); count += repeat) {
      search.around(count);
    }
    search.ways.sort(Comparator.comparingDouble(CurveLayout::harm));
    List<CurveLayout> kept = new ArrayList<>();
    for (CurveLayout way : search.ways) {
      if (kept.stream().noneMatch(other -> outdone(way, other))) {
        kept.add(way);
      }
    }
    return kept;
  }

  private static boolean outdone(CurveLayout way, CurveLayout other) {
    return way.wedges() == other.wedges() && way.legTiles() == other.legTiles() && way.means().containsAll(other.means());
  }

  private int fewest() {
    int repeat = border.row().repeat();
    double inner = Math.max(0, border.curve().radius() - border.permits().moveIn() - border.row().width());
    double shortest = 2 * border.curve().halfAngle() * inner;
    int count = (int) (shortest / (tile * (1 + border.permits().scale()) + border.joint().max()) / repeat) - 1;
    int least = border.curve().full() ? (2 + repeat) / repeat : 1;
    return Math.max(count, least) * repeat;
  }

  private int most() {
    double longest = 2 * border.curve().halfAngle() * (border.curve().radius() + border.permits().moveOut());
    return (int) (longest / (tile * (1 - border.permits().scale()) + border.joint().min())) + 1;
  }

  private void around(int count) {
    JointRange joint = border.joint();
    if (border.curve().legs()) {
      legs(count);
      return;
    }
    fixed(count, joint.preferred());
    if (joint.max() > joint.min()) {
      fixed(count, joint.min());
      fixed(count, joint.max());
      double closing = root(value -> length(value, 0, count) - tile, joint.min(), joint.max());
      if (!Double.isNaN(closing)) {
        fixed(count, closing);
      }
    }
  }

  private void fixed(int count, double joint) {
    close(count, 0, move -> new Leg(joint, tile, 0));
  }

  /** Every number of leg tiles: whole ones by the joint, by their length, by both; or with the foot cut. */
  private void legs(int count) {
    JointRange joint = border.joint();
    Permits permits = border.permits();
    double longest = border.curve().leg() + border.row().width() + permits.moveIn() + permits.moveOut();
    int repeat = border.row().repeat();
    for (int n = repeat; n * (tile * (1 - permits.scale()) + joint.min()) <= longest + tile; n += repeat) {
      int whole = n;
      close(count, whole, move -> within(byJoint(whole, move), whole));
      for (double fixed : DoubleStream.of(joint.min(), joint.preferred(), joint.max()).distinct().toArray()) {
        close(count, whole, move -> within(byLength(whole, fixed, move), whole));
        close(count, whole, move -> within(byFoot(whole, fixed, move), whole));
      }
    }
  }

  private Leg byJoint(int whole, double move) {
    return new Leg((legLength(move) - whole * tile) / (whole - 1 + springing(move).halfJoint(1)), tile, 0);
  }

  private Leg byLength(int whole, double joint, double move) {
    double half = springing(move).halfJoint(joint);
    return new Leg(joint, (legLength(move) - (whole - 1) * joint - half) / whole, 0);
  }

  private Leg byFoot(int whole, double joint, double move) {
    return new Leg(joint, tile, legLength(move) - whole * (tile + joint) - springing(move).halfJoint(joint));
  }

  private Leg within(Leg leg, int whole) {
    JointRange joint = border.joint();
    Permits permits = border.permits();
    boolean foot = leg.foot() == 0 || permits.endShare() > 0 && leg.foot() >= permits.endShare() * tile - EXACT
        && leg.foot() < tile - LeastHarm.NEAR;
    boolean possible = leg.joint() >= joint.min() - LeastHarm.NEAR && leg.joint() <= joint.max() + LeastHarm.NEAR
        && Math.abs(leg.tile() / tile - 1) <= permits.scale() + EXACT && foot;
    return possible ? leg : null;
  }

  private Springing springing(double move) {
    return Springing.of(border.curve(), border.row().width(), move);
  }

  private double legLength(double move) {
    return springing(move).outer().y() + border.curve().centre().y() - border.curve().footHeight();
  }

  /**
   * Closes the curve for what the legs ask: in place, moved, or moved as far as it may with pieces of another length.
   */
  private void close(int count, int legTiles, Legs legs) {
    Permits permits = border.permits();
    if (border.curve().halfAngle() >= Math.PI / 2 && legs.at(0) == null) {
      // Upright legs under a half circle stay as long as they are, wherever the band moves.
      return;
    }
    add(count, legTiles, legs.at(0), 0);
    if (permits.moveIn() > 0 || permits.moveOut() > 0) {
      double moved = root(move -> {
        Leg leg = legs.at(move);
        return leg == null ? Double.NaN : length(leg.joint(), move, count) - tile;
      }, -permits.moveOut(), permits.moveIn());
      if (!Double.isNaN(moved)) {
        add(count, legTiles, legs.at(moved), moved);
      }
      add(count, legTiles, legs.at(permits.moveIn()), permits.moveIn());
      add(count, legTiles, legs.at(-permits.moveOut()), -permits.moveOut());
    }
  }

  private double length(double joint, double move, int count) {
    Wedges wedges = Wedges.of(border, joint, move, count);
    return wedges.possible() ? wedges.length() : Double.NaN;
  }

  private void add(int count, int legTiles, Leg leg, double move) {
    if (leg == null) {
      return;
    }
    double stretch = length(leg.joint(), move, count) / tile - 1;
    double scale = Math.max(Math.abs(stretch), Math.abs(leg.tile() / tile - 1));
    if (!(scale <= border.permits().scale() + EXACT) || legTiles > 0 && !springs(leg, move, count)) {
      return;
    }
    Permits permits = border.permits();
    JointRange joint = border.joint();
    double[] used = {Math.abs(leg.joint() - joint.preferred()), Math.abs(move), scale > EXACT ? scale : 0, 0,
        leg.foot() > 0 ? 1 - leg.foot() / tile : 0};
    double[] most = {Math.max(joint.max() - joint.preferred(), joint.preferred() - joint.min()),
        Math.max(permits.moveIn(), permits.moveOut()), permits.scale(), 1, 1};
    EnumSet<Means> means = EnumSet.noneOf(Means.class);
    double harm = 0;
    double amount = 0;
    for (Means one : Means.values()) {
      double by = used[one.ordinal()];
      if (one == Means.ENDS ? leg.foot() > 0 : by > EXACT) {
        means.add(one);
        harm += one.weight();
        amount += by / most[one.ordinal()] / Means.values().length;
      }
    }
    ways.add(new CurveLayout(border, leg.joint(), move, count, legTiles, leg.tile(), leg.foot(), means,
        harm + Math.min(amount, 0.999)));
  }

  /** Whether the pieces at the springing line are long enough to be cut along it. */
  private boolean springs(Leg leg, double move, int count) {
    Springing springing = springing(move);
    Wedges wedges = Wedges.of(border, leg.joint(), move, count);
    double cutEnd = Springing.angle(springing.arcInner(leg.joint()));
    double otherEnd = Springing.angle(springing.arcOuter(leg.joint())) + Math.asin(leg.joint() / (2 * wedges.outer()))
        - wedges.angle() / 2 - wedges.halfAngle(wedges.inner());
    return springing.slope() < leg.tile() && (count == 1 ? cutEnd > 0 : cutEnd > otherEnd);
  }

  /** Where a function is 0: the place nearest to 0 where it changes its sign; NaN if nowhere. */
  private static double root(DoubleUnaryOperator function, double low, double high) {
    double best = Double.NaN;
    for (int i = 0; i < STEPS; i++) {
      double from = low + (high - low) * i / STEPS;
      double to = low + (high - low) * (i + 1) / STEPS;
      double root = bisected(function, from, to);
      if (!Double.isNaN(root) && !(Math.abs(root) >= Math.abs(best))) {
        best = root;
      }
    }
    return best;
  }

  private static double bisected(DoubleUnaryOperator function, double low, double high) {
    double a = low;
    double b = high;
    double atA = function.applyAsDouble(a);
    if (!(atA * function.applyAsDouble(b) <= 0)) {
      return Double.NaN;
    }
    for (double middle = (a + b) / 2; middle > a && middle < b; middle = (a + b) / 2) {
      double value = function.applyAsDouble(middle);
      if (value * atA > 0) {
        a = middle;
      } else {
        b = middle;
      }
    }
    return b;
  }
}
