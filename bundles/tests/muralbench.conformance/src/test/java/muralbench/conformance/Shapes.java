// SPDX-License-Identifier: EPL-2.0
package muralbench.conformance;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** Measures of {@code java.awt.geom} shapes with straight sides. */
final class Shapes {
  private Shapes() {}

  static double area(Area shape) {
    return Math.abs(rings(shape).stream().mapToDouble(Shapes::signed).sum());
  }

  /** The areas of the connected parts, each less its holes, smallest first. */
  static List<Double> parts(Area shape) {
    List<List<Point2D>> rings = rings(shape);
    // Outer rings all run the same way, holes the other; the largest ring is an outer one.
    double way = Math.signum(rings.stream().mapToDouble(Shapes::signed)
        .reduce(0, (a, b) -> Math.abs(b) > Math.abs(a) ? b : a));
    List<List<Point2D>> outer = rings.stream().filter(ring -> signed(ring) * way > 0).toList();
    List<Double> areas = new ArrayList<>();
    for (List<Point2D> ring : outer) {
      double area = Math.abs(signed(ring));
      for (List<Point2D> hole : rings) {
        if (signed(hole) * way < 0 && (outer.size() == 1 || path(ring).contains(hole.get(0)))) {
          area -= Math.abs(signed(hole));
        }
      }
      areas.add(area);
    }
    areas.sort(null);
    return areas;
  }

  static Path2D path(List<Point2D> ring) {
    Path2D.Double path = new Path2D.Double();
    path.moveTo(ring.get(0).getX(), ring.get(0).getY());
    ring.forEach(point -> path.lineTo(point.getX(), point.getY()));
    path.closePath();
    return path;
  }

  private static List<List<Point2D>> rings(Area shape) {
    List<List<Point2D>> rings = new ArrayList<>();
    double[] at = new double[6];
    for (PathIterator path = shape.getPathIterator(null, 1e-6); !path.isDone(); path.next()) {
      switch (path.currentSegment(at)) {
        case PathIterator.SEG_MOVETO -> rings.add(new ArrayList<>(List.of(new Point2D.Double(at[0], at[1]))));
        case PathIterator.SEG_LINETO -> rings.get(rings.size() - 1).add(new Point2D.Double(at[0], at[1]));
        default -> { }
      }
    }
    return rings;
  }

  private static double signed(List<Point2D> ring) {
    Point2D near = ring.get(0);
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      Point2D a = ring.get(i);
      Point2D b = ring.get((i + 1) % ring.size());
      twice += (a.getX() - near.getX()) * (b.getY() - near.getY())
          - (b.getX() - near.getX()) * (a.getY() - near.getY());
    }
    return twice / 2;
  }
}
