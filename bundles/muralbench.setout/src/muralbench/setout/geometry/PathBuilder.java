// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.ArrayList;
import java.util.List;

/** Collects the segments of path data into closed contours, or into lines; what has no length is left out. */
final class PathBuilder {
  /** A gap at the closing point up to this is rounding of relative coordinates, mm. */
  private static final double CLOSED = 1e-9;

  private final boolean closing;
  private final List<Contour> contours = new ArrayList<>();
  private final List<List<Segment>> lines = new ArrayList<>();
  private final List<Segment> segments = new ArrayList<>();
  private Vec start = Vec.ZERO;
  private Vec here = Vec.ZERO;

  /** A builder of contours, or of lines that stay open unless the path closes them. */
  PathBuilder(boolean closing) {
    this.closing = closing;
  }

  Vec here() {
    return here;
  }

  void move(Vec to) {
    end();
    start = to;
    here = to;
  }

  void line(Vec to) {
    if (!to.equals(here)) {
      add(new Line(here, to), to);
    }
  }

  void cubic(Vec c1, Vec c2, Vec to) {
    if (!(c1.equals(here) && c2.equals(here) && to.equals(here))) {
      add(new Cubic(here, c1, c2, to), to);
    }
  }

  void add(Segment segment, Vec to) {
    segments.add(segment);
    here = to;
  }

  /** Ends the subpath where it began. */
  void close() {
    if (!segments.isEmpty()) {
      if (here.distance(start) > CLOSED) {
        line(start);
      } else {
        segments.add(ending(segments.remove(segments.size() - 1), start));
      }
      keep();
    }
    here = start;
  }

  private void end() {
    if (closing) {
      close();
    } else if (!segments.isEmpty()) {
      keep();
    }
  }

  private void keep() {
    if (closing) {
      contours.add(new Contour(segments));
    } else {
      lines.add(List.copyOf(segments));
    }
    segments.clear();
  }

  private static Segment ending(Segment last, Vec end) {
    if (last instanceof Line line) {
      return new Line(line.start(), end);
    }
    return last instanceof Cubic cubic ? new Cubic(cubic.start(), cubic.c1(), cubic.c2(), end) : last;
  }

  /** All contours, the last closed. */
  List<Contour> contours() {
    close();
    return List.copyOf(contours);
  }

  /** All lines. */
  List<List<Segment>> lines() {
    end();
    return List.copyOf(lines);
  }
}
