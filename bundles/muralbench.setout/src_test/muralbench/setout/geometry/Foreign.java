// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.awt.Shape;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;

/** Contours measured by java.awt.geom, which shares no code with ours. */
final class Foreign {
  private Foreign() {}

  /** Lines and Bezier curves as they are. */
  static Path2D path(Contour contour) {
    Path2D path = new Path2D.Double();
    Vec start = contour.segments().get(0).start();
    path.moveTo(start.x(), start.y());
    for (Segment segment : contour.segments()) {
      if (segment instanceof Cubic c) {
        path.curveTo(c.c1().x(), c.c1().y(), c.c2().x(), c.c2().y(), c.end().x(), c.end().y());
      } else {
        path.lineTo(segment.end().x(), segment.end().y());
      }
    }
    path.closePath();
    return path;
  }

  /** The enclosed area, counter-clockwise positive for y up, of a shape of one closed line; error about 1e-5. */
  static double area(Shape shape) {
    double[] at = new double[6];
    double area = 0;
    double lastX = 0;
    double lastY = 0;
    double startX = 0;
    double startY = 0;
    for (PathIterator flat = flat(shape); !flat.isDone(); flat.next()) {
      if (flat.currentSegment(at) == PathIterator.SEG_MOVETO) {
        startX = at[0];
        startY = at[1];
      } else {
        area += lastX * at[1] - lastY * at[0];
      }
      lastX = at[0];
      lastY = at[1];
    }
    return (area + lastX * startY - lastY * startX) / 2;
  }

  /** The box of the flattened shape: closer than the one around its control points. */
  static Rectangle2D tight(Shape shape) {
    Path2D chords = new Path2D.Double();
    chords.append(flat(shape), false);
    return chords.getBounds2D();
  }

  private static PathIterator flat(Shape shape) {
    return new FlatteningPathIterator(shape.getPathIterator(null), 1e-5, 12);
  }
}
