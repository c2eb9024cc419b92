// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;

/**
 * Parallel lines rising to the right at 45 degrees that fill an area. With lines of 0.18 mm at least 1.2 mm apart they
 * survive a photocopier (common practice). All lines of a sheet lie on one grid, so hatching of neighbours runs
 * through.
 *
 * @param spacing distance between lines, mm
 */
public record Hatching(double spacing) {
  /** For cut tile. */
  public static final Hatching CUT = new Hatching(1.4);

  private static final double CHORD_ERROR = 0.02;
  private static final double SHORTEST = 0.2;

  /**
   * The lines that fill the area inside an odd number of edges.
   *
   * @param edges on paper, mm
   * @param clear boxes that stay free of lines, for texts
   */
  public List<Line> lines(List<Contour> edges, List<Box> clear) {
    List<List<Vec>> rings = edges.stream().map(edge -> edge.points(CHORD_ERROR)).toList();
    double step = spacing * Math.sqrt(2);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (List<Vec> ring : rings) {
      for (Vec point : ring) {
        low = Math.min(low, point.y() - point.x());
        high = Math.max(high, point.y() - point.x());
      }
    }
    List<Line> lines = new ArrayList<>();
    for (double rise = Math.ceil(low / step) * step; rise < high; rise += step) {
      double[] crossings = crossings(rings, rise);
      for (int i = 0; i + 1 < crossings.length; i += 2) {
        add(lines, crossings[i], crossings[i + 1], rise, clear, 0);
      }
    }
    return lines;
  }

  /** Where the line y = x + rise enters and leaves, by x. */
  private static double[] crossings(List<List<Vec>> rings, double rise) {
    double[] found = new double[8];
    int count = 0;
    for (List<Vec> ring : rings) {
      Vec a = ring.get(ring.size() - 1);
      for (Vec b : ring) {
        double above = a.y() - a.x() - rise;
        double after = b.y() - b.x() - rise;
        if (above > 0 != after > 0) {
          found = count == found.length ? Arrays.copyOf(found, 2 * count) : found;
          found[count++] = a.x() + (b.x() - a.x()) * above / (above - after);
        }
        a = b;
      }
    }
    double[] sorted = Arrays.copyOf(found, count);
    Arrays.sort(sorted);
    return sorted;
  }

  private static void add(List<Line> lines, double from, double to, double rise, List<Box> clear, int next) {
    if (to - from < SHORTEST) {
      return;
    }
    for (int i = next; i < clear.size(); i++) {
      Box box = clear.get(i);
      double enter = Math.max(box.minX(), box.minY() - rise);
      double leave = Math.min(box.maxX(), box.maxY() - rise);
      if (enter < leave && enter < to && leave > from) {
        add(lines, from, Math.min(to, enter), rise, clear, i + 1);
        add(lines, Math.max(from, leave), to, rise, clear, i + 1);
        return;
      }
    }
    lines.add(new Line(new Vec(from, from + rise), new Vec(to, to + rise)));
  }
}
