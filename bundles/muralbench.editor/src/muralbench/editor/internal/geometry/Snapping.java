// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Pulls a frame that is moved or resized onto lines of interest, or else onto a grid.
 *
 * @param xs lines across x, mm
 * @param ys lines across y, mm
 * @param reach how far a line pulls, mm
 * @param step the grid, mm, above 0
 */
public record Snapping(List<Double> xs, List<Double> ys, double reach, double step) {
  /** The edges of a frame that a person has hold of. */
  public record Edges(boolean left, boolean right, boolean bottom, boolean top) {
    /** Whether a corner is held. */
    public boolean corner() {
      return (left || right) && (bottom || top);
    }

    /** The frame made square without moving the edges that are not held. */
    public Frame square(Frame frame) {
      double size = corner() ? Math.max(frame.width(), frame.height())
          : left || right ? frame.width() : frame.height();
      double x = left ? frame.right() - size : right ? frame.x() : frame.middleX() - size / 2;
      double y = bottom ? frame.top() - size : top ? frame.y() : frame.middleY() - size / 2;
      return new Frame(Frame.clean(x), Frame.clean(y), size, size);
    }
  }

  /**
   * A frame after snapping.
   *
   * @param frame where it ends up
   * @param x the line that held it across x, if one did
   * @param y the line that held it across y
   */
  public record Snapped(Frame frame, OptionalDouble x, OptionalDouble y) {}

  private record Pull(double shift, double line) {}

  private static final double FREE_STEPS = 100;

  /** Smallest size a frame is resized to, mm. */
  public static final double SMALLEST = 5;

  /** Free of lines and grid. */
  public Snapping without() {
    return new Snapping(List.of(), List.of(), 0, 1 / FREE_STEPS);
  }

  /**
   * The frame moved; the nearest of its edges and middles that is near a line goes onto it. Along an axis on which
   * nothing moves it stays where it is, on the grid or not.
   */
  public Snapped move(Frame start, double dx, double dy) {
    Snapped settled = settle(start.moved(dx, dy));
    Frame to = start.moved(dx == 0 ? 0 : settled.frame.x() - start.x(), dy == 0 ? 0 : settled.frame.y() - start.y());
    return new Snapped(to, dx == 0 ? OptionalDouble.empty() : settled.x, dy == 0 ? OptionalDouble.empty() : settled.y);
  }

  /** The frame shifted onto the nearest lines, else onto the grid. */
  public Snapped settle(Frame frame) {
    Optional<Pull> x = nearest(xs, frame.x(), frame.middleX(), frame.right());
    Optional<Pull> y = nearest(ys, frame.y(), frame.middleY(), frame.top());
    double dx = x.map(Pull::shift).orElseGet(() -> toGrid(frame.x()) - frame.x());
    double dy = y.map(Pull::shift).orElseGet(() -> toGrid(frame.y()) - frame.y());
    return new Snapped(frame.moved(dx, dy), line(x), line(y));
  }

  /** The frame with the held edges moved. */
  public Snapped resize(Frame start, Edges edges, double dx, double dy) {
    OptionalDouble x = OptionalDouble.empty();
    OptionalDouble y = OptionalDouble.empty();
    Frame frame = start;
    if (edges.left() || edges.right()) {
      double wanted = (edges.left() ? start.x() : start.right()) + dx;
      x = line(nearest(xs, wanted));
      double edge = x.orElse(toGrid(wanted));
      frame = edges.left() ? frame.withLeft(Math.min(edge, start.right() - SMALLEST))
          : frame.withRight(Math.max(edge, start.x() + SMALLEST));
    }
    if (edges.bottom() || edges.top()) {
      double wanted = (edges.bottom() ? start.y() : start.top()) + dy;
      y = line(nearest(ys, wanted));
      double edge = y.orElse(toGrid(wanted));
      frame = edges.bottom() ? frame.withBottom(Math.min(edge, start.top() - SMALLEST))
          : frame.withTop(Math.max(edge, start.y() + SMALLEST));
    }
    return new Snapped(frame, x, y);
  }

  private Optional<Pull> nearest(List<Double> lines, double... edges) {
    Pull best = null;
    for (double line : lines) {
      for (double edge : edges) {
        double shift = line - edge;
        if (Math.abs(shift) <= reach && (best == null || Math.abs(shift) < Math.abs(best.shift))) {
          best = new Pull(shift, line);
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static OptionalDouble line(Optional<Pull> pull) {
    return pull.map(found -> OptionalDouble.of(found.line())).orElse(OptionalDouble.empty());
  }

  /** The nearest line across x in reach, else the nearest grid line. */
  public double toLineOrGridX(double millimetres) {
    return line(nearest(xs, millimetres)).orElse(toGrid(millimetres));
  }

  /** The nearest line across y in reach, else the nearest grid line. */
  public double toLineOrGridY(double millimetres) {
    return line(nearest(ys, millimetres)).orElse(toGrid(millimetres));
  }

  /** The nearest grid line. */
  public double toGrid(double millimetres) {
    return Frame.clean(Math.round(millimetres / step) * step);
  }
}
