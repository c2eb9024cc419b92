// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * The edges of a region, each with the inside on its left, sorted into squares: for looking at very many starts of a
 * pattern. Curves are taken as chords.
 */
final class RegionEdges {
  /** How far chords may be from curves here, mm. */
  static final double CHORD_ERROR = 0.05;
  private static final double SAME = 1e-9;
  private static final int MOST_SQUARES = 1_000_000;

  /** Start of each edge. */
  final double[] x;
  final double[] y;
  /** The edge that begins where an edge ends. */
  final int[] next;

  private final double minX;
  private final double minY;
  private final double side;
  private final int columns;
  private final int rows;
  private final int[][] squares;
  private final int[] crossed;

  /**
   * The edges of a region.
   *
   * @param contours outer edges counter-clockwise, holes clockwise
   * @param wished side of a square, mm
   */
  RegionEdges(List<Contour> contours, double wished) {
    List<List<Vec>> rings = contours.stream().map(RegionEdges::corners).filter(ring -> ring.size() > 2).toList();
    int count = rings.stream().mapToInt(List::size).sum();
    x = new double[count];
    y = new double[count];
    next = new int[count];
    int at = 0;
    Box box = Box.of(rings.get(0).get(0), rings.get(0).get(0));
    for (List<Vec> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        x[at + i] = ring.get(i).x();
        y[at + i] = ring.get(i).y();
        next[at + i] = at + (i + 1) % ring.size();
        box = box.and(ring.get(i));
      }
      at += ring.size();
    }
    minX = box.minX();
    minY = box.minY();
    side = Math.max(Math.max(wished, Math.sqrt(box.width() * box.height() / MOST_SQUARES)),
        Math.max(box.width(), box.height()) / MOST_SQUARES);
    columns = (int) (box.width() / side) + 1;
    rows = (int) (box.height() / side) + 1;
    squares = new int[columns * rows][];
    for (int edge = 0; edge < count; edge++) {
      sort(edge);
    }
    int found = 0;
    int[] all = new int[squares.length];
    for (int i = 0; i < squares.length; i++) {
      if (squares[i] != null) {
        squares[i] = trimmed(squares[i]);
        all[found++] = i;
      }
    }
    crossed = Arrays.copyOf(all, found);
  }

  private static List<Vec> corners(Contour contour) {
    List<Vec> points = contour.points(CHORD_ERROR);
    List<Vec> corners = new ArrayList<>(points.size());
    Vec last = points.get(points.size() - 1);
    for (Vec point : points) {
      if (point.distance(last) > SAME) {
        corners.add(point);
        last = point;
      }
    }
    return corners;
  }

  /** The first number of a square's list says how many follow. */
  private void sort(int edge) {
    double x1 = x[next[edge]];
    double y1 = y[next[edge]];
    for (int row = row(Math.min(y[edge], y1)); row <= row(Math.max(y[edge], y1)); row++) {
      for (int column = column(Math.min(x[edge], x1)); column <= column(Math.max(x[edge], x1)); column++) {
        double left = minX + column * side;
        double low = minY + row * side;
        if (EdgeGrid.crosses(x[edge], y[edge], x1, y1, left, low, left + side, low + side)) {
          int square = row * columns + column;
          int[] list = squares[square] == null ? new int[4] : squares[square];
          if (list[0] + 1 == list.length) {
            list = Arrays.copyOf(list, 2 * list.length);
          }
          list[++list[0]] = edge;
          squares[square] = list;
        }
      }
    }
  }

  private static int[] trimmed(int[] list) {
    return Arrays.copyOfRange(list, 1, list[0] + 1);
  }

  private int column(double at) {
    return Math.max(0, Math.min(columns - 1, (int) ((at - minX) / side)));
  }

  private int row(double at) {
    return Math.max(0, Math.min(rows - 1, (int) ((at - minY) / side)));
  }

  /** How many edges there are. */
  int count() {
    return x.length;
  }

  /** The squares that edges cross. */
  int[] crossed() {
    return crossed;
  }

  /** Where a square is. */
  Box square(int square) {
    double left = minX + square % columns * side;
    double low = minY + square / columns * side;
    return new Box(left, low, left + side, low + side);
  }

  /** Lists the edges in the squares that a box meets; an edge may be listed more than once. Gives their number. */
  int near(double left, double low, double right, double high, int[][] found) {
    int count = 0;
    if (right < minX || high < minY || left > minX + columns * side || low > minY + rows * side) {
      return 0;
    }
    int lastRow = row(high);
    int lastColumn = column(right);
    for (int row = row(low); row <= lastRow; row++) {
      for (int column = column(left); column <= lastColumn; column++) {
        int[] list = squares[row * columns + column];
        if (list != null) {
          if (count + list.length > found[0].length) {
            found[0] = Arrays.copyOf(found[0], 2 * (count + list.length));
          }
          System.arraycopy(list, 0, found[0], count, list.length);
          count += list.length;
        }
      }
    }
    return count;
  }
}
