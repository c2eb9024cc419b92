// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;

/** The crossed lines that mark an opening: the diagonals of its box, as far as they lie in it. */
final class Diagonals {
  private static final double CHORD_ERROR = 0.05;

  private Diagonals() {}

  static List<Line> of(Contour opening) {
    Box box = opening.box();
    List<Vec> ring = opening.points(CHORD_ERROR);
    List<Line> lines = new ArrayList<>();
    clip(lines, new Line(new Vec(box.minX(), box.minY()), new Vec(box.maxX(), box.maxY())), ring);
    clip(lines, new Line(new Vec(box.minX(), box.maxY()), new Vec(box.maxX(), box.minY())), ring);
    return lines;
  }

  private static void clip(List<Line> lines, Line diagonal, List<Vec> ring) {
    Vec way = diagonal.end().minus(diagonal.start());
    List<Double> crossings = new ArrayList<>();
    Vec a = ring.get(ring.size() - 1);
    for (Vec b : ring) {
      double before = way.cross(a.minus(diagonal.start()));
      double after = way.cross(b.minus(diagonal.start()));
      if (before > 0 != after > 0) {
        Vec met = a.towards(b, before / (before - after));
        crossings.add(met.minus(diagonal.start()).dot(way) / way.dot(way));
      }
      a = b;
    }
    crossings.sort(null);
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      lines.add(diagonal.part(crossings.get(i), crossings.get(i + 1)));
    }
  }
}
