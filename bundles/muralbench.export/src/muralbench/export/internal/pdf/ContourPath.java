// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.io.IOException;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Cubic;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Writes contours as paths: Bezier curves as they are, arcs as Bezier curves that stray less than 0.001 mm. */
final class ContourPath {
  /** With twelve curves to the full turn, a circle of 1 m radius is off by less than 0.0004 mm. */
  private static final double LARGEST_STEP = Math.PI / 6;

  private final PDPageContentStream out;
  private final double unit;

  /** @param unit points in a millimetre */
  ContourPath(PDPageContentStream out, double unit) {
    this.out = out;
    this.unit = unit;
  }

  void add(Contour contour) throws IOException {
    Vec start = contour.segments().get(0).start();
    out.moveTo(f(start.x()), f(start.y()));
    for (Segment segment : contour.segments()) {
      if (segment instanceof Arc arc) {
        add(arc);
      } else if (segment instanceof Cubic curve) {
        curve(curve.c1(), curve.c2(), curve.end());
      } else {
        out.lineTo(f(segment.end().x()), f(segment.end().y()));
      }
    }
    out.closePath();
  }

  private void add(Arc arc) throws IOException {
    int curves = Math.max(1, (int) Math.ceil(Math.abs(arc.sweep()) / LARGEST_STEP));
    double step = arc.sweep() / curves;
    double reach = 4.0 / 3 * Math.tan(step / 4);
    for (int i = 0; i < curves; i++) {
      double a = arc.from() + i * step;
      double b = a + step;
      Vec start = arc.atAngle(a);
      Vec end = i == curves - 1 ? arc.end() : arc.atAngle(b);
      curve(start.plus(speed(arc, a).times(reach)), end.minus(speed(arc, b).times(reach)), end);
    }
  }

  /** The derivative of the arc's point by its angle: the point a quarter turn ahead, seen from the centre. */
  private static Vec speed(Arc arc, double angle) {
    return arc.atAngle(angle + Math.PI / 2).minus(arc.centre());
  }

  private void curve(Vec c1, Vec c2, Vec end) throws IOException {
    out.curveTo(f(c1.x()), f(c1.y()), f(c2.x()), f(c2.y()), f(end.x()), f(end.y()));
  }

  private float f(double millimetres) {
    return (float) (millimetres * unit);
  }
}
