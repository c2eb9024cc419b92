// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A small linear programme in at most three unknowns: equations, bounds, and a sum of weighted distances to be kept
 * least. The equations are solved first; in what they leave, the least sum lies where as many bounds or zero
 * distances meet as there are unknowns left, and all those points are tried. Works in doubles; what holds to {@link
 * #NEAR} counts as held.
 */
final class LeastHarm {
  /** Bounds hold to this, mm. */
  static final double NEAR = 1e-7;
  /** A pivot below this share of the largest coefficient is rounding dust. */
  private static final double DUST = 1e-11;

  private final int unknowns;
  private final List<double[]> equations = new ArrayList<>();
  private final List<double[]> bounds = new ArrayList<>();
  private final List<double[]> distances = new ArrayList<>();
  private double[] base;
  private List<double[]> directions;

  /** A point and its sum. */
  record Point(double[] at, double sum) {}

  LeastHarm(int unknowns) {
    this.unknowns = unknowns;
  }

  /** Asks for coefficients times unknowns = value, to a tolerance. */
  void equal(double[] coefficients, double value, double tolerance) {
    equations.add(row(coefficients, value, tolerance));
  }

  /** Asks for low <= coefficients times unknowns <= high. */
  void between(double[] coefficients, double low, double high) {
    bounds.add(row(coefficients, low, high));
  }

  /** Adds weight times |coefficients times unknowns - at| to the sum. */
  void distance(double[] coefficients, double at, double weight) {
    distances.add(row(coefficients, at, weight));
  }

  private static double[] row(double[] coefficients, double... more) {
    double[] row = Arrays.copyOf(coefficients, coefficients.length + more.length);
    System.arraycopy(more, 0, row, coefficients.length, more.length);
    return row;
  }

  /**
   * The point with the least sum, or null if nothing holds all equations and bounds; without any distance the first
   * point that holds them.
   */
  Point best() {
    solveEquations();
    int left = directions.size();
    if (left == 0) {
      return tried(base, null);
    }
    List<double[]> planes = planes();
    int[] pick = new int[left];
    return pick(planes, pick, 0, 0, null);
  }

  private Point pick(List<double[]> planes, int[] pick, int depth, int from, Point best) {
    if (depth == pick.length) {
      double[] point = meeting(planes, pick);
      return point == null ? best : tried(point, best);
    }
    Point found = best;
    for (int i = from; i < planes.size() && (found == null || !distances.isEmpty()); i++) {
      pick[depth] = i;
      found = pick(planes, pick, depth + 1, i + 1, found);
    }
    return found;
  }

  private Point tried(double[] point, Point best) {
    double sum = 0;
    for (double[] distance : distances) {
      sum += distance[unknowns + 1] * Math.abs(value(distance, point) - distance[unknowns]);
    }
    if (best != null && best.sum() <= sum) {
      return best;
    }
    return holds(point) ? new Point(point, sum) : best;
  }

  private boolean holds(double[] point) {
    for (double[] equation : equations) {
      if (!(Math.abs(value(equation, point) - equation[unknowns]) <= equation[unknowns + 1])) {
        return false;
      }
    }
    for (double[] bound : bounds) {
      double value = value(bound, point);
      if (!(value >= bound[unknowns] - NEAR && value <= bound[unknowns + 1] + NEAR)) {
        return false;
      }
    }
    return true;
  }

  private double value(double[] row, double[] point) {
    double value = 0;
    for (int i = 0; i < unknowns; i++) {
      value += row[i] * point[i];
    }
    return value;
  }

  /** Bounds and zero distances as planes in what the equations leave. */
  private List<double[]> planes() {
    List<double[]> planes = new ArrayList<>();
    for (double[] bound : bounds) {
      for (int side = unknowns; side <= unknowns + 1; side++) {
        if (Double.isFinite(bound[side]) && (side == unknowns || bound[side] != bound[unknowns])) {
          planes.add(plane(bound, bound[side]));
        }
      }
    }
    for (double[] distance : distances) {
      planes.add(plane(distance, distance[unknowns]));
    }
    return planes;
  }

  private double[] plane(double[] row, double at) {
    int left = directions.size();
    double[] plane = new double[left + 1];
    for (int i = 0; i < left; i++) {
      plane[i] = value(row, directions.get(i));
    }
    plane[left] = at - value(row, base);
    return plane;
  }

  private double[] meeting(List<double[]> planes, int[] pick) {
    int left = pick.length;
    double[][] rows = new double[left][];
    for (int i = 0; i < left; i++) {
      rows[i] = planes.get(pick[i]).clone();
    }
    if (eliminate(rows, left).length < left) {
      return null;
    }
    double[] point = base.clone();
    for (double[] row : rows) {
      int pivot = 0;
      while (row[pivot] == 0) {
        pivot++;
      }
      for (int i = 0; i < unknowns; i++) {
        point[i] += row[left] * directions.get(pivot)[i];
      }
    }
    return point;
  }

  /** Finds one solution of the equations and the directions in which it may move. */
  private void solveEquations() {
    double[][] rows = new double[equations.size()][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = Arrays.copyOf(equations.get(i), unknowns + 1);
    }
    int[] pivots = eliminate(rows, unknowns);
    base = new double[unknowns];
    boolean[] fixed = new boolean[unknowns];
    for (int i = 0; i < pivots.length; i++) {
      base[pivots[i]] = rows[i][unknowns];
      fixed[pivots[i]] = true;
    }
    directions = new ArrayList<>();
    for (int free = 0; free < unknowns; free++) {
      if (!fixed[free]) {
        double[] direction = new double[unknowns];
        direction[free] = 1;
        for (int i = 0; i < pivots.length; i++) {
          direction[pivots[i]] = -rows[i][free];
        }
        directions.add(direction);
      }
    }
  }

  /** Gauss and Jordan with the largest pivot; returns the pivot's column for each of the first rows. */
  private static int[] eliminate(double[][] rows, int columns) {
    int[] pivots = new int[Math.min(rows.length, columns)];
    double largest = 0;
    for (double[] row : rows) {
      for (int c = 0; c < columns; c++) {
        largest = Math.max(largest, Math.abs(row[c]));
      }
    }
    for (int done = 0; done < pivots.length; done++) {
      int bestRow = done;
      int bestColumn = 0;
      for (int r = done; r < rows.length; r++) {
        for (int c = 0; c < columns; c++) {
          if (Math.abs(rows[r][c]) > Math.abs(rows[bestRow][bestColumn])) {
            bestRow = r;
            bestColumn = c;
          }
        }
      }
      double pivot = rows[bestRow][bestColumn];
      if (Math.abs(pivot) <= DUST * largest) {
        return Arrays.copyOf(pivots, done);
      }
      double[] row = rows[bestRow];
      rows[bestRow] = rows[done];
      rows[done] = row;
      pivots[done] = bestColumn;
      clear(rows, done, bestColumn, columns);
    }
    return pivots;
  }

  private static void clear(double[][] rows, int done, int column, int columns) {
    double[] row = rows[done];
    double pivot = row[column];
    for (int c = 0; c <= columns; c++) {
      row[c] /= pivot;
    }
    row[column] = 1;
    for (int r = 0; r < rows.length; r++) {
      double factor = rows[r][column];
      if (r != done && factor != 0) {
        for (int c = 0; c <= columns; c++) {
          rows[r][c] -= factor * row[c];
        }
        rows[r][column] = 0;
      }
    }
  }
}
