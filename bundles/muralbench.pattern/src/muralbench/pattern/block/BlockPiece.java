// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.util.List;
import muralbench.pattern.symmetry.Rational;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * One piece of a block.
 *
 * @param colour name of its colour
 * @param kind the unit it belongs to
 * @param contour its edge, counter-clockwise, in units from the lower left corner of the block
 * @param area its area, exact
 */
public record BlockPiece(String colour, UnitKind kind, Contour contour, ExactArea area) {
  /** A polygon; the corners may run either way round. */
  static BlockPiece polygon(String colour, UnitKind kind, List<Corner> corners) {
    Rational twice = Rational.ZERO;
    for (int i = 0; i < corners.size(); i++) {
      Corner a = corners.get(i);
      Corner b = corners.get((i + 1) % corners.size());
      twice = twice.plus(a.x().times(b.y())).minus(b.x().times(a.y()));
    }
    Rational area = twice.times(Rational.of(twice.sign() < 0 ? -1 : 1, 2));
    Contour contour = Contour.polygon(corners.stream().map(Corner::point).toList());
    return new BlockPiece(colour, kind, contour.counterClockwise(), ExactArea.of(area));
  }

  /** A quarter disc about a corner of the unit at ({@code x}, {@code y}); quadrant 0 opens to the upper right. */
  static BlockPiece quarterDisc(String colour, Vec centre, Rational radius, int quadrant) {
    double r = radius.value();
    Arc arc = Arc.circular(centre, r, quadrant * Math.PI / 2, Math.PI / 2);
    Vec start = along(centre, r, quadrant);
    Vec end = along(centre, r, quadrant + 1);
    Contour contour = new Contour(List.of(new Line(centre, start), arc, new Line(end, centre)));
    return new BlockPiece(colour, UnitKind.QUARTER_CIRCLE, contour, new ExactArea(Rational.ZERO,
        radius.times(radius).times(Rational.of(1, 4))));
  }

  /** What a quarter disc leaves of its unit. */
  static BlockPiece besideDisc(String colour, Vec centre, Rational radius, int quadrant) {
    double r = radius.value();
    Vec first = along(centre, 1, quadrant);
    Vec second = along(centre, 1, quadrant + 1);
    Vec far = first.plus(second).minus(centre);
    Segment arc = Arc.circular(centre, r, (quadrant + 1) * Math.PI / 2, -Math.PI / 2);
    Vec start = along(centre, r, quadrant);
    Vec end = along(centre, r, quadrant + 1);
    Contour contour = r == 1 ? new Contour(List.of(new Line(first, far), new Line(far, second), arc))
        : new Contour(List.of(new Line(start, first), new Line(first, far), new Line(far, second),
            new Line(second, end), arc));
    return new BlockPiece(colour, UnitKind.QUARTER_CIRCLE, contour, new ExactArea(Rational.ONE,
        radius.times(radius).times(Rational.of(-1, 4))));
  }

  private static Vec along(Vec from, double length, int quarter) {
    return switch (quarter % 4) {
      case 0 -> new Vec(from.x() + length, from.y());
      case 1 -> new Vec(from.x(), from.y() + length);
      case 2 -> new Vec(from.x() - length, from.y());
      default -> new Vec(from.x(), from.y() - length);
    };
  }
}
