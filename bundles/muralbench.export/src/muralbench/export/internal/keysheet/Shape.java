// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.List;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** The area inside an odd number of edges on paper, with curves as chords; answers whether texts lie in it or on it. */
final class Shape {
  private static final double CHORD_ERROR = 0.05;

  private final List<List<Vec>> rings;
  private final Box box;

  /** The shape of an outer edge with its holes, on paper. */
  Shape(List<Contour> edges) {
    rings = edges.stream().map(edge -> edge.points(CHORD_ERROR)).toList();
    box = edges.get(0).box();
  }

  Box box() {
    return box;
  }

  /** Whether the whole of {@code text} lies in the shape. */
  boolean holds(Box text) {
    return box.holds(text) && !edgeMeets(text) && contains(text.centre());
  }

  /** Whether the shape and {@code text} share some area. */
  boolean meets(Box text) {
    return box.meets(text) && (edgeMeets(text) || contains(text.centre()));
  }

  private boolean contains(Vec point) {
    boolean inside = false;
    for (List<Vec> ring : rings) {
      Vec a = ring.get(ring.size() - 1);
      for (Vec b : ring) {
        if (a.y() > point.y() != b.y() > point.y()
            && point.x() < a.x() + (b.x() - a.x()) * (point.y() - a.y()) / (b.y() - a.y())) {
          inside = !inside;
        }
        a = b;
      }
    }
    return inside;
  }

  private boolean edgeMeets(Box text) {
    for (List<Vec> ring : rings) {
      Vec a = ring.get(ring.size() - 1);
      for (Vec b : ring) {
        if (meets(a, b, text)) {
          return true;
        }
        a = b;
      }
    }
    return false;
  }

  /** Whether a stretch passes through a box: the stretch is cut back to each side of the box in turn. */
  static boolean meets(Vec a, Vec b, Box box) {
    double[] stay = {0, 1};
    Vec way = b.minus(a);
    return cut(stay, way.x(), box.minX() - a.x(), box.maxX() - a.x())
        && cut(stay, way.y(), box.minY() - a.y(), box.maxY() - a.y());
  }

  private static boolean cut(double[] stay, double way, double low, double high) {
    if (way == 0) {
      return low <= 0 && high >= 0;
    }
    stay[0] = Math.max(stay[0], Math.min(low / way, high / way));
    stay[1] = Math.min(stay[1], Math.max(low / way, high / way));
    return stay[0] <= stay[1];
  }
}
