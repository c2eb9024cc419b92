// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.ArrayList;
import java.util.List;
import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;

/** An upright rectangle that shows a part of a drawing, brought to (0, 0). */
final class Window {
  private final Isometry toCorner;
  private final List<HalfPlane> sides;

  Window(double x, double y, double width, double height) {
    toCorner = Isometry.shift(-x, -y);
    double slack = 1e-6 * Math.max(width, height);
    sides = List.of(new HalfPlane(true, x, true, slack), new HalfPlane(true, x + width, false, slack),
        new HalfPlane(false, y, true, slack), new HalfPlane(false, y + height, false, slack));
  }

  /** What is seen of an area, its edges the usual way round. */
  List<Contour> cut(List<Contour> contours) {
    List<Contour> left = contours;
    for (HalfPlane side : sides) {
      left = side.cut(left);
    }
    return left.stream().map(toCorner::of).toList();
  }

  /** What is seen of a line, in one or more stretches. */
  List<List<Segment>> cutLine(List<Segment> segments) {
    List<List<Segment>> left = List.of(segments);
    for (HalfPlane side : sides) {
      List<List<Segment>> seen = new ArrayList<>();
      left.forEach(stretch -> seen.addAll(side.stretches(stretch)));
      left = seen;
    }
    return left.stream().map(stretch -> stretch.stream().map(toCorner::of).toList()).toList();
  }
}
