// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * A way to lay a band on a curve so that it closes.
 *
 * @param border the band
 * @param joint width of all its joints, mm; parallel-sided
 * @param move how far it lies inside the curve, mm; negative for out
 * @param wedges number of pieces on the curve, whole repeats
 * @param legTiles number of whole tiles in each leg; 0 without legs
 * @param legTile length of a whole tile of a leg, mm
 * @param foot length of the cut tile at each foot, mm; 0 if there is none
 * @param means what it takes
 * @param harm the weights of the means plus a part below 1, see {@link BandLayout#harm()}
 */
public record CurveLayout(CurveBorder border, double joint, double move, int wedges, int legTiles, double legTile,
    double foot, Set<Means> means, double harm) {
  public CurveLayout {
    means = Set.copyOf(means);
  }

  Wedges pieces() {
    return Wedges.of(border, joint, move, wedges);
  }

  /** Length of a piece of the curve along the middle of the row, mm. */
  public double wedgeLength() {
    return pieces().length();
  }

  /** How much longer a piece of the curve is than the tile, as a share; negative for shorter. */
  public double stretch() {
    return wedgeLength() / border.row().length() - 1;
  }

  /** Straight width of a piece of the curve at its outer edge, mm: the width of the blank it is cut from. */
  public double outerChord() {
    return pieces().outerChord();
  }

  /** Straight width of a piece of the curve at its inner edge, mm. */
  public double innerChord() {
    return pieces().innerChord();
  }

  /** Height of the blank a piece of the curve is cut from, mm. */
  public double blankHeight() {
    return pieces().blankHeight();
  }

  /** How many whole repeats there are on the curve. */
  public int repeats() {
    return wedges / border.row().repeat();
  }

  /** What is left of a leg when everything is laid, as a share of its length; below 1e-9. */
  public double legResidual() {
    if (legTiles == 0) {
      return 0;
    }
    Springing springing = Springing.of(border.curve(), border.row().width(), move);
    double length = springing.outer().y() + border.curve().centre().y() - border.curve().footHeight();
    int between = legTiles - (foot > 0 ? 0 : 1);
    return Math.abs(length - legTiles * legTile - foot - between * joint - springing.halfJoint(joint)) / length;
  }

  /** The curve of the next row or of the field: a row and a joint farther in. Its legs keep their feet. */
  public Curve inside() {
    Curve curve = border.curve();
    double by = move + border.row().width() + joint;
    double radius = curve.radius() - by;
    if (!curve.legs()) {
      return new Curve(curve.centre(), radius, curve.middle(), curve.halfAngle(), 0);
    }
    Vec outer = Springing.of(curve, border.row().width(), by).outer();
    double angle = curve.halfAngle() == Math.PI / 2 ? curve.halfAngle() : Springing.angle(outer);
    return new Curve(curve.centre(), radius, curve.middle(), angle,
        outer.y() + curve.centre().y() - curve.footHeight());
  }

  /**
   * The outline of the field inside the band, a joint from its inner edge: of an arch closed by a straight line
   * between the feet; empty for an arc, which encloses nothing.
   */
  public Optional<Contour> field() {
    Curve inside = inside();
    if (inside.full()) {
      return Optional.of(Contour.circle(inside.centre(), inside.radius()));
    }
    if (!inside.legs()) {
      return Optional.empty();
    }
    Arc arc = Arc.circular(inside.centre(), inside.radius(), Math.PI / 2 - inside.halfAngle(), 2 * inside.halfAngle());
    Vec right = new Vec(inside.centre().x() + inside.halfWidth(), inside.footHeight());
    Vec left = new Vec(inside.centre().x() - inside.halfWidth(), inside.footHeight());
    List<Segment> segments = new ArrayList<>();
    segments.add(new Line(left, right));
    segments.add(new Line(right, arc.start()));
    segments.add(arc);
    segments.add(new Line(arc.end(), left));
    return Optional.of(new Contour(segments));
  }
}
