// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Cubic;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * Stretches a contour along the two axes and shifts it: (x, y) goes to (scaleX x + shiftX, scaleY y + shiftY). Both
 * scales are above 0, so that the way round stays the same.
 */
record PathFit(double scaleX, double scaleY, double shiftX, double shiftY) {
  /** The fit that takes one frame to another. */
  static PathFit of(Frame from, Frame to) {
    double scaleX = from.sameSize(to) ? 1 : to.width() / from.width();
    double scaleY = from.sameSize(to) ? 1 : to.height() / from.height();
    return new PathFit(scaleX, scaleY, to.x() - scaleX * from.x(), to.y() - scaleY * from.y());
  }

  double x(double x) {
    return Frame.clean(scaleX * x + shiftX);
  }

  double y(double y) {
    return Frame.clean(scaleY * y + shiftY);
  }

  Contour of(Contour contour) {
    return new Contour(contour.segments().stream().map(this::of).toList());
  }

  private Vec of(Vec point) {
    return new Vec(x(point.x()), y(point.y()));
  }

  private Segment of(Segment segment) {
    if (segment instanceof Line line) {
      return new Line(of(line.start()), of(line.end()));
    }
    if (segment instanceof Cubic cubic) {
      return new Cubic(of(cubic.start()), of(cubic.c1()), of(cubic.c2()), of(cubic.end()));
    }
    return of((Arc) segment);
  }

  /**
   * The image of an ellipse is an ellipse: the matrix that takes the unit circle to it is split into a turn, a stretch
   * along the axes and a turn of the parameter (singular values of a 2 by 2 matrix).
   */
  private Arc of(Arc arc) {
    if (scaleX == scaleY) {
      return new Arc(of(arc.centre()), scaleX * arc.rx(), scaleX * arc.ry(), arc.tilt(), arc.from(), arc.sweep());
    }
    double cos = Math.cos(arc.tilt());
    double sin = Math.sin(arc.tilt());
    double a = scaleX * cos * arc.rx();
    double b = -scaleX * sin * arc.ry();
    double c = scaleY * sin * arc.rx();
    double d = scaleY * cos * arc.ry();
    double sum = Math.hypot(a + d, c - b) / 2;
    double difference = Math.hypot(a - d, c + b) / 2;
    double plus = Math.atan2(c - b, a + d);
    double minus = difference == 0 ? plus : Math.atan2(c + b, a - d);
    double tilt = (plus + minus) / 2;
    double turned = (plus - minus) / 2;
    return new Arc(of(arc.centre()), sum + difference, sum - difference, tilt, arc.from() + turned, arc.sweep());
  }
}
