// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.geometry.Vec;

/**
 * Closes a band on a circle, an arc or an arch with whole repeats of wedges and parallel-sided joints of one width. A
 * piece of the curve is as long as the tile if its length along the middle of the row is; it is cut from a blank as
 * wide as its outer chord. On an arch the joint at the springing line falls between two pieces, and both legs close
 * with the same joint. Ordered as {@link ClosingSolver} orders, by {@link Means}; where two means work together the
 * lesser is used as far as it may be. That the length is taken along the middle is common practice.
 */
public final class CurveSolver {
  private static final Messages TEXTS = Messages.of(CurveSolver.class);
  private static final double FINEST = 25.4 / 64;
  private static final double WIDE = 12.7;
  private static final double MOST_SCALE = 0.1;

  /**
   * What came of closing a band on a curve.
   *
   * @param layouts the best ways, the least harm first, at most three; empty if the band does not close
   * @param message empty if it closes; else that it does not, and what would work instead
   * @param hints what would work instead, one text each
   */
  public record Result(List<CurveLayout> layouts, String message, List<String> hints) {
    /** The way with the least harm. */
    public Optional<CurveLayout> best() {
      return layouts.stream().findFirst();
    }
  }

  private CurveSolver() {}

  /**
   * The best ways to close a band on a curve, or what would work instead.
   *
   * @param units the units of lengths in texts
   * @throws InputException if the band is no band, with a JSON pointer from the band, such as {@code /curve/radius}
   */
  public static Result solve(CurveBorder border, LengthUnit units) throws InputException {
    check(border, units);
    List<CurveLayout> ways = CurveWays.of(border);
    if (!ways.isEmpty()) {
      return new Result(List.copyOf(ways.subList(0, Math.min(ClosingSolver.BEST, ways.size()))), "", List.of());
    }
    List<String> hints = hints(border, new BandWords(units));
    return new Result(List.of(), BandWords.doesNotClose(straight(border), hints, units), hints);
  }

  private static void check(CurveBorder border, LengthUnit units) throws InputException {
    BorderChecks.numbers(straight(border), units);
    Curve curve = border.curve();
    double width = border.row().width();
    double inner = curve.radius() - border.permits().moveIn() - width;
    if (!(curve.radius() > 0 && inner > border.joint().max())) {
      throw refused("/curve/radius", "curve.radius", "radius", LengthText.fine(curve.radius(), units), "width",
          LengthText.fine(width, units));
    }
    if (!(curve.halfAngle() > 0 && curve.halfAngle() <= Math.PI) || curve.legs() && curve.halfAngle() > Math.PI / 2) {
      throw refused("/curve/halfAngle", "curve.angle");
    }
    if (!(curve.leg() >= 0) || curve.legs() && curve.halfWidth() - border.permits().moveIn() - width <= 0) {
      throw refused("/curve/leg", "curve.leg");
    }
    int tiles = border.row().repeat();
    double least = tiles * border.row().length() * (1 - border.permits().scale());
    double most = 2 * curve.halfAngle() * (curve.radius() + border.permits().moveOut());
    if (least > most) {
      throw refused("/row/repeat", "curve.repeat", "repeat", LengthText.fine(least, units), "length",
          LengthText.fine(most, units));
    }
  }

  /** The same row on a straight run, for the checks and texts that do not look at the curve. */
  private static Border straight(CurveBorder border) {
    return Border.of(BandPath.straight(Vec.ZERO, new Vec(1, 0)), border.row(), Corner.TILE, border.joint(),
        border.permits());
  }

  private static InputException refused(String place, String key, Object... values) {
    return new InputException(place, TEXTS.text(key, values), TEXTS.text(key + ".remedy", values));
  }

  private static List<String> hints(CurveBorder border, BandWords words) {
    JointRange joint = border.joint();
    Permits permits = border.permits();
    double tile = border.row().length();
    double wide = Math.min(Math.max(2 * joint.max(), WIDE), tile / 2);
    double far = Math.min((tile + joint.max()) / 2,
        (border.curve().radius() - border.row().width()) / 2 - joint.max());
    List<String> hints = new ArrayList<>();
    JointRange wider = new JointRange(Math.min(FINEST, joint.min()), joint.preferred(), Math.max(wide, joint.max()));
    nearest(new CurveBorder(border.curve(), border.row(), wider, permits), way -> way.joint() - joint.preferred())
        .ifPresent(way -> hints.add(words.joint(told(way))));
    if (far > 0) {
      nearest(with(border, permits.move(Math.max(far, permits.moveIn()), Math.max(far, permits.moveOut()))),
          CurveLayout::move).ifPresent(way -> hints.add(words.moved(told(way))));
    }
    nearest(with(border, permits.scale(Math.max(MOST_SCALE, permits.scale()))), CurveSolver::scale)
        .ifPresent(way -> hints.add(words.scaled(told(way))));
    return hints;
  }

  private static CurveBorder with(CurveBorder border, Permits permits) {
    return new CurveBorder(border.curve(), border.row(), border.joint(), permits);
  }

  private static Optional<CurveLayout> nearest(CurveBorder widened, Function<CurveLayout, Double> change) {
    return CurveWays.of(widened).stream().filter(way -> change.apply(way) != 0)
        .min(Comparator.comparingDouble(way -> Math.abs(change.apply(way))));
  }

  private static double scale(CurveLayout way) {
    return Math.abs(way.stretch()) > Math.abs(way.legTile() / way.border().row().length() - 1) ? way.stretch()
        : way.legTile() / way.border().row().length() - 1;
  }

  /** As the words of straight bands tell it. */
  private static Found told(CurveLayout way) {
    int mask = way.means().stream().mapToInt(Means::weight).sum();
    return new Found(mask, 0, 0, List.of(), way.joint(), 1 + scale(way), way.move());
  }
}
