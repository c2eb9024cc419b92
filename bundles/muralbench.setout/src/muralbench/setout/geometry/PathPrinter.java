// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.List;

/** Writes contours as path data; every double is written so that it reads back the same. */
final class PathPrinter {
  /** Arcs beyond three quarters of a turn are written in two, since their end points say little about the centre. */
  private static final double LONGEST = 1.5 * Math.PI;

  private final StringBuilder out = new StringBuilder();

  private PathPrinter() {}

  static String print(Contour contour) {
    PathPrinter printer = new PathPrinter();
    List<Segment> segments = contour.segments();
    Vec start = segments.get(0).start();
    printer.out.append('M').append(number(start.x())).append(' ').append(number(start.y()));
    for (int i = 0; i < segments.size(); i++) {
      boolean last = i == segments.size() - 1;
      // Z draws the last straight side.
      if (!last || !segments.get(i).straight()) {
        printer.segment(segments.get(i), last ? start : segments.get(i).end());
      }
    }
    return printer.out.append('Z').toString();
  }

  private void segment(Segment segment, Vec end) {
    if (segment instanceof Arc arc) {
      arc(arc, end);
    } else if (segment instanceof Cubic cubic) {
      out.append('C');
      point(cubic.c1());
      point(cubic.c2());
      point(end);
    } else {
      out.append('L');
      point(end);
    }
  }

  private void arc(Arc arc, Vec end) {
    if (Math.abs(arc.sweep()) > LONGEST) {
      Arc half = arc.part(0, 0.5);
      arc(half, half.end());
      arc(arc.part(0.5, 1), end);
      return;
    }
    out.append('A');
    point(new Vec(arc.rx(), arc.ry()));
    out.append(' ').append(number(arc.circular() ? 0 : Math.toDegrees(arc.tilt()) % 360));
    out.append(Math.abs(arc.sweep()) > Math.PI ? " 1" : " 0").append(arc.sweep() > 0 ? " 1" : " 0");
    point(end);
  }

  private void point(Vec point) {
    out.append(' ').append(number(point.x())).append(' ').append(number(point.y()));
  }

  /** The shortest text that reads back as the same double; minus zero loses its sign. */
  private static String number(double value) {
    String text = Double.toString(value + 0.0);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
