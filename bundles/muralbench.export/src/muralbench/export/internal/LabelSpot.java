// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * The place in a shape where an upright label can be largest. The search halves squares, best hope first, until no
 * square can hold a label that is larger by more than one part in a hundred; the middle of the shape's box is kept when
 * it is as good as any, so that labels of whole tiles line up.
 *
 * @param middle the middle of the label, in the coordinates of the shape
 * @param height the largest height of a label of the asked proportions that stays inside, mm; 0 if there is no room
 */
public record LabelSpot(Vec middle, double height) {
  private static final double CHORD_ERROR = 0.1;
  private static final double WORTH_MOVING = 1.01;

  /**
   * Finds the place.
   *
   * @param outline edge of the shape, either way round
   * @param holes holes in it
   * @param proportion width of the label divided by its height, above 0
   */
  public static LabelSpot in(Contour outline, List<Contour> holes, double proportion) {
    return new Search(outline, holes, proportion).best();
  }

  /**
   * The place in which a label that need not be larger than {@code enough} has the most room around it; where there is
   * less room than that, the place in which it can be largest. The height is at most {@code enough}.
   */
  public static LabelSpot roomy(Contour outline, List<Contour> holes, double proportion, double enough) {
    for (double room : new double[] {1, Math.sqrt(proportion)}) {
      LabelSpot spot = in(outline, holes, room);
      if (room < proportion && spot.height * room / proportion >= enough) {
        return new LabelSpot(spot.middle, enough);
      }
    }
    LabelSpot largest = in(outline, holes, proportion);
    return new LabelSpot(largest.middle, Math.min(enough, largest.height));
  }

  /** A square of the search in coordinates in which the label is a square, with the half label that fits its middle. */
  private record Square(Vec middle, double half, double fits) {
    double hope() {
      return fits + half;
    }
  }

  /** One search: edges with x divided by the proportion, as x1, y1, x2, y2. */
  private static final class Search {
    private final List<double[]> edges = new ArrayList<>();
    private final double proportion;
    private final Box box;

    Search(Contour outline, List<Contour> holes, double proportion) {
      this.proportion = proportion;
      Box wide = outline.box();
      box = new Box(wide.minX() / proportion, wide.minY(), wide.maxX() / proportion, wide.maxY());
      add(outline);
      holes.forEach(this::add);
    }

    private void add(Contour contour) {
      List<Vec> points = contour.points(CHORD_ERROR);
      for (int i = 0; i < points.size(); i++) {
        Vec a = points.get(i);
        Vec b = points.get((i + 1) % points.size());
        edges.add(new double[] {a.x() / proportion, a.y(), b.x() / proportion, b.y()});
      }
    }

    LabelSpot best() {
      PriorityQueue<Square> open = new PriorityQueue<>(Comparator.comparingDouble(Square::hope).reversed());
      Square best = square(box.centre(), 0);
      double side = Math.min(box.width(), box.height());
      if (side > 0) {
        for (double x = box.minX() + side / 2; x - side / 2 < box.maxX(); x += side) {
          for (double y = box.minY() + side / 2; y - side / 2 < box.maxY(); y += side) {
            open.add(square(new Vec(x, y), side / 2));
          }
        }
      }
      while (!open.isEmpty() && open.peek().hope() > Math.max(best.fits, side / 1000) * WORTH_MOVING) {
        Square square = open.poll();
        if (square.fits > best.fits * WORTH_MOVING && square.fits > 0) {
          best = square;
        }
        for (int quarter = 0; quarter < 4; quarter++) {
          double half = square.half / 2;
          Vec step = new Vec(quarter % 2 == 0 ? -half : half, quarter < 2 ? -half : half);
          open.add(square(square.middle.plus(step), half));
        }
      }
      return new LabelSpot(new Vec(best.middle.x() * proportion, best.middle.y()), Math.max(0, 2 * best.fits));
    }

    private Square square(Vec middle, double half) {
      boolean inside = false;
      double nearest = Double.MAX_VALUE;
      for (double[] edge : edges) {
        double x1 = edge[0] - middle.x();
        double y1 = edge[1] - middle.y();
        double x2 = edge[2] - middle.x();
        double y2 = edge[3] - middle.y();
        if (y1 > 0 != y2 > 0 && x1 + (x2 - x1) * y1 / (y1 - y2) > 0) {
          inside = !inside;
        }
        nearest = Math.min(nearest, reach(x1, y1, x2, y2));
      }
      return new Square(middle, half, inside ? nearest : -nearest);
    }

    /** The half side of the largest square about (0, 0) that an edge leaves free: max(|x|, |y|) is least at a kink. */
    private static double reach(double x1, double y1, double x2, double y2) {
      double dx = x2 - x1;
      double dy = y2 - y1;
      double reach = Math.min(Math.max(Math.abs(x1), Math.abs(y1)), Math.max(Math.abs(x2), Math.abs(y2)));
      for (double t : new double[] {-x1 / dx, -y1 / dy, (y1 - x1) / (dx - dy), -(x1 + y1) / (dx + dy)}) {
        if (t > 0 && t < 1) {
          reach = Math.min(reach, Math.max(Math.abs(x1 + t * dx), Math.abs(y1 + t * dy)));
        }
      }
      return reach;
    }
  }
}
