// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.util.List;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Cubic;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * Where the work lies on the paper and how much smaller.
 *
 * @param reduction how many times smaller the drawing is than the work, above 0; 10 for 1:10
 * @param work a point of the work, mm
 * @param paper where that point is drawn, mm on the sheet
 */
public record Placing(double reduction, Vec work, Vec paper) {
  /** A length of the work as drawn, mm. */
  public double of(double length) {
    return length / reduction;
  }

  /** A point of the work as drawn. */
  public Vec of(Vec point) {
    return new Vec(x(point.x()), y(point.y()));
  }

  /** A place across the work as drawn. */
  public double x(double across) {
    return paper.x() + (across - work.x()) / reduction;
  }

  /** A height of the work as drawn. */
  public double y(double height) {
    return paper.y() + (height - work.y()) / reduction;
  }

  /** A box of the work as drawn. */
  public Box of(Box box) {
    return new Box(x(box.minX()), y(box.minY()), x(box.maxX()), y(box.maxY()));
  }

  /** An edge of the work as drawn. */
  public Contour of(Contour contour) {
    return new Contour(contour.segments().stream().map(this::of).toList());
  }

  /** Edges of the work as drawn. */
  public List<Contour> of(List<Contour> contours) {
    return contours.stream().map(this::of).toList();
  }

  private Segment of(Segment segment) {
    if (segment instanceof Arc arc) {
      return new Arc(of(arc.centre()), of(arc.rx()), of(arc.ry()), arc.tilt(), arc.from(), arc.sweep());
    }
    if (segment instanceof Cubic curve) {
      return new Cubic(of(curve.start()), of(curve.c1()), of(curve.c2()), of(curve.end()));
    }
    return new Line(of(segment.start()), of(segment.end()));
  }
}
