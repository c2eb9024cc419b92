// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Tells quickly whether an edge of a region comes near a box: the edges are sorted into the squares of a grid about as
 * wide as a tile.
 */
final class EdgeGrid {
  private static final int MOST_SQUARES = 4_000_000;

  private final Envelope box;
  private final double side;
  private final int columns;
  private final int rows;
  private final int[] first;
  private int[] next = new int[64];
  private double[] ends = new double[4 * 64];
  private int size;

  /**
   * A grid of a region's edges.
   *
   * @param side wished side of a square, mm, above 0
   */
  EdgeGrid(Geometry region, double side) {
    box = region.getEnvelopeInternal();
    double least = Math.sqrt(box.getWidth() * box.getHeight() / MOST_SQUARES);
    this.side = Math.max(Math.max(side, least), Math.max(box.getWidth(), box.getHeight()) / MOST_SQUARES);
    columns = (int) (box.getWidth() / this.side) + 1;
    rows = (int) (box.getHeight() / this.side) + 1;
    first = new int[columns * rows];
    Arrays.fill(first, -1);
    for (Polygon polygon : Rings.polygons(region)) {
      add(polygon.getExteriorRing());
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        add(polygon.getInteriorRingN(i));
      }
    }
  }

  private void add(LinearRing ring) {
    CoordinateSequence points = ring.getCoordinateSequence();
    for (int i = 1; i < points.size(); i++) {
      add(points.getX(i - 1), points.getY(i - 1), points.getX(i), points.getY(i));
    }
  }

  private void add(double x0, double y0, double x1, double y1) {
    int right = column(Math.max(x0, x1));
    int top = row(Math.max(y0, y1));
    for (int column = column(Math.min(x0, x1)); column <= right; column++) {
      for (int row = row(Math.min(y0, y1)); row <= top; row++) {
        if (crosses(x0, y0, x1, y1, box.getMinX() + column * side, box.getMinY() + row * side,
            box.getMinX() + (column + 1) * side, box.getMinY() + (row + 1) * side)) {
          put(row * columns + column, x0, y0, x1, y1);
        }
      }
    }
  }

  private void put(int square, double x0, double y0, double x1, double y1) {
    if (size == next.length) {
      next = Arrays.copyOf(next, 2 * size);
      ends = Arrays.copyOf(ends, 8 * size);
    }
    ends[4 * size] = x0;
    ends[4 * size + 1] = y0;
    ends[4 * size + 2] = x1;
    ends[4 * size + 3] = y1;
    next[size] = first[square];
    first[square] = size++;
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) ((x - box.getMinX()) / side)));
  }

  private int row(double y) {
    return Math.max(0, Math.min(rows - 1, (int) ((y - box.getMinY()) / side)));
  }

  /** Whether an edge of the region meets the box; touching counts. */
  boolean meets(Envelope shape) {
    if (!box.intersects(shape)) {
      return false;
    }
    int right = column(shape.getMaxX());
    int top = row(shape.getMaxY());
    for (int row = row(shape.getMinY()); row <= top; row++) {
      for (int column = column(shape.getMinX()); column <= right; column++) {
        for (int edge = first[row * columns + column]; edge >= 0; edge = next[edge]) {
          int at = 4 * edge;
          if (crosses(ends[at], ends[at + 1], ends[at + 2], ends[at + 3], shape.getMinX(), shape.getMinY(),
              shape.getMaxX(), shape.getMaxY())) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** Whether a line meets a box, touching included; may say yes for a line that misses by rounding. */
  static boolean crosses(double x0, double y0, double x1, double y1, double minX, double minY, double maxX,
      double maxY) {
    if (Math.max(x0, x1) < minX || Math.min(x0, x1) > maxX || Math.max(y0, y1) < minY || Math.min(y0, y1) > maxY) {
      return false;
    }
    double dx = x1 - x0;
    double dy = y1 - y0;
    double slack = 1e-9 * (Math.abs(dx) + Math.abs(dy));
    double a = dx * (minY - y0) - dy * (minX - x0);
    double b = dx * (minY - y0) - dy * (maxX - x0);
    double c = dx * (maxY - y0) - dy * (minX - x0);
    double d = dx * (maxY - y0) - dy * (maxX - x0);
    return Math.min(Math.min(a, b), Math.min(c, d)) <= slack && Math.max(Math.max(a, b), Math.max(c, d)) >= -slack;
  }

  /** A point of a box to ask about when no edge meets the box. */
  static Coordinate middle(Envelope shape) {
    return new Coordinate((shape.getMinX() + shape.getMaxX()) / 2, (shape.getMinY() + shape.getMaxY()) / 2);
  }
}
