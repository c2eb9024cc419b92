// SPDX-License-Identifier: EPL-2.0
package muralbench.conformance;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.PathData;
import muralbench.setout.geometry.Vec;

/**
 * A closed line twice over: as the contour that the set-out is given, and as corners made here without its help.
 *
 * @param contour for the set-out
 * @param corners the same line as a polygon, counter-clockwise; arcs are chains of chords that enclose the same area as
 *     the arc and leave it by less than {@link #STRAY}
 */
record Outline(Contour contour, List<Point2D> corners) {
  /** The farthest a chord is from its arc, mm. */
  static final double STRAY = 0.001;

  static Outline rectangle(double x, double y, double width, double height) {
    return new Outline(Contour.rectangle(x, y, width, height), List.of(point(x, y), point(x + width, y),
        point(x + width, y + height), point(x, y + height)));
  }

  static Outline polygon(List<Point2D> corners) {
    return new Outline(Contour.polygon(corners.stream().map(at -> new Vec(at.getX(), at.getY())).toList()), corners);
  }

  static Outline circle(double x, double y, double radius) {
    return new Outline(Contour.circle(new Vec(x, y), radius), arc(x, y, radius, 0, 2 * Math.PI));
  }

  /** A rectangle under a half circle, given to the set-out as path data. */
  static Outline arch(double x, double y, double width, double height) {
    double radius = width / 2;
    String data = String.format(Locale.ROOT, "M%s %s h%s v%s A%s %s 0 0 1 %s %s Z", x, y, width, height, radius,
        radius, x, y + height);
    List<Point2D> corners = new ArrayList<>(List.of(point(x, y), point(x + width, y), point(x + width, y + height)));
    corners.addAll(arc(x + radius, y + height, radius, 0, Math.PI));
    corners.add(point(x, y + height));
    try {
      return new Outline(PathData.parse(data).get(0).counterClockwise(), corners);
    } catch (PathData.PathDataException wrong) {
      throw new AssertionError(wrong);
    }
  }

  /** The region inside, after a turn by {@code -turn} radians about a point that becomes (0, 0). */
  Area area(Vec about, double turn) {
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    Path2D.Double path = new Path2D.Double();
    for (Point2D corner : corners) {
      double x = corner.getX() - about.x();
      double y = corner.getY() - about.y();
      double u = cos * x + sin * y;
      double v = -sin * x + cos * y;
      if (path.getCurrentPoint() == null) {
        path.moveTo(u, v);
      } else {
        path.lineTo(u, v);
      }
    }
    path.closePath();
    return new Area(path);
  }

  /** Corners strictly between the ends, on a radius made larger so that every sector keeps the area of its arc. */
  private static List<Point2D> arc(double x, double y, double radius, double from, double sweep) {
    int steps = (int) Math.ceil(Math.abs(sweep) / (2 * Math.acos(1 - STRAY / radius)));
    double step = sweep / steps;
    double reach = radius * Math.sqrt(step / Math.sin(step));
    List<Point2D> points = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      double angle = from + step * (i + 0.5);
      points.add(point(x + reach * Math.cos(angle), y + reach * Math.sin(angle)));
    }
    return points;
  }

  private static Point2D point(double x, double y) {
    return new Point2D.Double(x, y);
  }
}
