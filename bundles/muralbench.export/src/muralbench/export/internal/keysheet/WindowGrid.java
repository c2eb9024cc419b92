// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.geometry.Box;

/**
 * A panel parted into windows, one to a sheet, as even as joints allow.
 *
 * @param across the limits from left to right, one more than there are columns
 * @param up the limits from bottom to top, one more than there are rows
 */
record WindowGrid(List<Double> across, List<Double> up) {
  WindowGrid {
    across = List.copyOf(across);
    up = List.copyOf(up);
  }

  /**
   * Parts a box.
   *
   * @param width the most a window may be wide
   * @param height the most it may be high
   * @param columns places across where a limit does least harm, rising
   * @param courses the same for heights
   */
  static WindowGrid of(Box box, double width, double height, List<Double> columns, List<Double> courses) {
    return new WindowGrid(limits(box.minX(), box.maxX(), width, columns),
        limits(box.minY(), box.maxY(), height, courses));
  }

  private static List<Double> limits(double from, double to, double most, List<Double> wanted) {
    int parts = (int) Math.max(1, Math.ceil((to - from) / most - 1e-9));
    List<Double> limits = new ArrayList<>(List.of(from));
    for (int i = 1; i < parts; i++) {
      double low = to - (parts - i) * most;
      double high = limits.get(i - 1) + most;
      limits.add(nearest(from + (to - from) * i / parts, low, high, wanted));
    }
    limits.add(to);
    return limits;
  }

  private static double nearest(double even, double low, double high, List<Double> wanted) {
    double best = Double.NaN;
    for (double place : wanted) {
      boolean closer = Double.isNaN(best) || Math.abs(place - even) < Math.abs(best - even);
      if (place >= low && place <= high && closer) {
        best = place;
      }
    }
    return Double.isNaN(best) ? Math.max(low, Math.min(high, even)) : best;
  }

  int columns() {
    return across.size() - 1;
  }

  int rows() {
    return up.size() - 1;
  }

  /** How many windows there are. */
  int count() {
    return columns() * rows();
  }

  /** A window; rows count from 0 at the bottom, columns from 0 at the left. */
  Box window(int row, int column) {
    return new Box(across.get(column), up.get(row), across.get(column + 1), up.get(row + 1));
  }

  /** Whether a part of the panel lies in one window, but for {@code touch} mm. */
  boolean keepsWhole(Box part, double touch) {
    Box core = part.grown(-touch);
    return row(core.minY()) == row(core.maxY()) && column(core.minX()) == column(core.maxX());
  }

  /** The column of a place across; places outside belong to the nearest. */
  int column(double x) {
    return index(across, x);
  }

  /** The row of a height. */
  int row(double y) {
    return index(up, y);
  }

  private static int index(List<Double> limits, double place) {
    int index = 0;
    while (index < limits.size() - 2 && place >= limits.get(index + 1)) {
      index++;
    }
    return index;
  }
}
