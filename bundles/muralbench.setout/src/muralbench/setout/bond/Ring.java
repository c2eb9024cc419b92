// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;

/**
 * One ring of equal wedges with parallel-sided joints. At the radius r a wedge spans the half angle pi / N - asin(j / 2r),
 * so that each joint keeps its width j from the inner to the outer edge.
 *
 * @param inner inner radius, mm
 * @param outer outer radius, mm
 * @param count number of wedges N, at least 3
 * @param joint width of the joints, mm
 */
record Ring(double inner, double outer, int count, double joint) {
  /** Whether the joints leave room for the wedges at the inner edge. */
  boolean possible() {
    return count >= 3 && inner > 0 && outer > inner && joint < 2 * inner && halfAngle(inner) > 0;
  }

  /** The half angle of a wedge at a radius, radians. */
  double halfAngle(double radius) {
    return Math.PI / count - Math.asin(joint / (2 * radius));
  }

  /** Width of the rectangle a wedge is cut from, mm: its outer chord, or for wide wedges twice the outer radius. */
  double blankWidth() {
    double half = halfAngle(outer);
    return 2 * outer * (half >= Math.PI / 2 ? 1 : Math.sin(half));
  }

  /** Height of the rectangle a wedge is cut from, mm. */
  double blankHeight() {
    return outer - inner * Math.cos(halfAngle(inner));
  }

  /** The wedge with a number, 0 upright at the top and the others clockwise. */
  Contour wedge(int number) {
    double middle = Math.PI / 2 - 2 * Math.PI * number / count;
    double out = halfAngle(outer);
    double in = halfAngle(inner);
    Arc rim = Arc.circular(Vec.ZERO, outer, middle - out, 2 * out);
    Arc hollow = Arc.circular(Vec.ZERO, inner, middle + in, -2 * in);
    return new Contour(List.of(rim, new Line(rim.end(), hollow.start()), hollow, new Line(hollow.end(), rim.start())));
  }
}
