// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import muralbench.setout.PieceKind;
import muralbench.setout.bond.Cell;
import muralbench.setout.bond.Pattern;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.NarrowWidth;
import muralbench.setout.geometry.Vec;

/**
 * Lays a pattern on a region from one start after the other and looks at the pieces along the edges. It goes to the places
 * first that spoiled the last starts, so most bad starts are given up after a piece or two.
 */
final class StartTrial {
  /** How many places that spoiled starts are remembered. */
  private static final int HOT = 16;
  private static final int MANY_CORNERS = 1024;

  private final TiledRegion region;
  private final Motion turned;
  private final Pattern pattern;
  private final RegionEdges edges;
  private final FaceCut cut;
  private final int[] order;
  private final Set<Long> seen = new HashSet<>();
  private final double[] hot = new double[2 * HOT];
  private int hots;
  private long looks;

  private Vec at;
  private boolean counting;
  private boolean exact;
  private double limit;
  private double reach;
  private double deadly;

  private double smallest;
  private double lasting;
  private int cuts;
  private boolean over;
  private Vec spoilt;
  private double flushRight;
  private double flushUp;

  /**
   * Trials on a region.
   *
   * @param turned the turn of the pattern on the wall
   * @param side about the size of a tile, mm
   */
  StartTrial(TiledRegion region, Motion turned, Pattern pattern, double side) {
    this.region = region;
    this.turned = turned;
    this.pattern = pattern;
    Motion back = turned.inverse();
    List<Contour> contours = region.edges().stream().map(edge -> edge.moved(back)).toList();
    edges = new RegionEdges(contours, side);
    cut = new FaceCut(edges);
    order = edges.crossed().clone();
  }

  /**
   * The narrowest width of the cut pieces, mm; infinite if nothing is cut, -1 as soon as a piece is narrower than the limit.
   *
   * @param at the start, in the pattern's directions
   */
  double smallest(Vec at, double limit) {
    run(at, limit, 0, -1, false);
    return over ? -1 : smallest;
  }

  /** As {@link #smallest}, but of the true pieces with their curves, which takes longer. */
  double trulySmallest(Vec at, double limit) {
    exact = true;
    try {
      return smallest(at, limit);
    } finally {
      exact = false;
    }
  }

  /** How many faces are cut. */
  int cuts(Vec at) {
    run(at, 0, 0, -1, true);
    return cuts;
  }

  /**
   * Looks at a start and those around it.
   *
   * @param reach by how much the width of a piece can change among them, mm
   * @param deadly no start around is of use where a piece that all of them have cannot be wider than this, mm
   * @return false if none is of use; else {@link #found()} and {@link #bound()} tell more
   */
  boolean probe(Vec at, double reach, double deadly) {
    run(at, 0, reach, deadly, false);
    return !over;
  }

  /** The narrowest width at the start that was probed. */
  double found() {
    return smallest;
  }

  /** What the narrowest width cannot exceed at the starts around the one that was probed. */
  double bound() {
    return lasting + reach;
  }

  /** Where to move the start that was probed to make pieces vanish that are narrower than the reach. */
  Vec flush() {
    return new Vec(flushRight, flushUp);
  }

  private void run(Vec start, double least, double around, double useless, boolean count) {
    at = start;
    limit = least;
    reach = around;
    deadly = useless;
    counting = count;
    smallest = Double.POSITIVE_INFINITY;
    lasting = Double.POSITIVE_INFINITY;
    cuts = 0;
    over = false;
    spoilt = null;
    flushRight = 0;
    flushUp = 0;
    seen.clear();
    for (int i = 0; i < hots && !over; i++) {
      Vec place = new Vec(hot[2 * i], hot[2 * i + 1]).minus(at);
      pattern.cells(Box.of(place, place), this::look);
      if (over) {
        remember(hot[2 * i], hot[2 * i + 1], i);
      }
    }
    for (int i = 0; i < order.length && !over; i++) {
      Box square = edges.square(order[i]);
      pattern.cells(new Box(square.minX() - at.x(), square.minY() - at.y(), square.maxX() - at.x(),
          square.maxY() - at.y()), this::look);
      if (over) {
        int first = order[i];
        System.arraycopy(order, 0, order, 1, i);
        order[0] = first;
        remember(spoilt.x(), spoilt.y(), Math.min(hots, HOT - 1));
      }
    }
  }

  /** Puts a place first among those that spoiled starts; what was at an index is moved there or drops out. */
  private void remember(double x, double y, int index) {
    System.arraycopy(hot, 0, hot, 2, 2 * index);
    hot[0] = x;
    hot[1] = y;
    hots = Math.max(hots, index + 1);
  }

  /** How many faces were looked at so far. */
  long looks() {
    return looks;
  }

  private void look(Cell cell) {
    if (over || !seen.add((long) cell.course() << 32 ^ cell.position() & 0xffffffffL)) {
      return;
    }
    looks++;
    switch (exact ? FaceCut.Result.UNKNOWN : cut.cut(cell.face(), at.x(), at.y())) {
      case CUT -> {
        cuts += cut.pieces().isEmpty() ? 0 : 1;
        if (!counting) {
          for (List<double[]> rings : cut.pieces()) {
            // Pieces with very many corners take as long as many others.
            looks += (long) rings.get(0).length * rings.get(0).length / MANY_CORNERS;
            double width = NarrowWidth.of(rings, 0);
            if (deadly >= 0 && width <= reach) {
              flush(rings.get(0), cell.face().box());
            }
            measure(width, rings, middle(rings.get(0)));
          }
        }
      }
      case UNKNOWN -> slowly(cell);
      default -> { }
    }
  }

  /** Notes how the start would have to be moved for a narrow piece of a face to vanish. */
  private void flush(double[] ring, Box face) {
    Box box = Box.of(new Vec(ring[0], ring[1]), new Vec(ring[0], ring[1]));
    for (int i = 2; i < ring.length; i += 2) {
      box = box.and(new Vec(ring[i], ring[i + 1]));
    }
    Vec middle = face.centre().plus(at);
    if (box.width() <= reach) {
      flushRight = box.centre().x() < middle.x() ? box.width() : -box.width();
    }
    if (box.height() <= reach) {
      flushUp = box.centre().y() < middle.y() ? box.height() : -box.height();
    }
  }

  private static Vec middle(double[] ring) {
    double x = 0;
    double y = 0;
    for (int i = 0; i < ring.length; i += 2) {
      x += ring[i];
      y += ring[i + 1];
    }
    return new Vec(2 * x / ring.length, 2 * y / ring.length);
  }

  private void measure(double width, List<double[]> rings, Vec place) {
    smallest = Math.min(smallest, width);
    if (deadly >= 0) {
      if (width > reach && width < lasting) {
        lasting = Math.min(lasting, rings == null || reach == 0 ? width : NarrowWidth.of(rings, 2 * reach));
        over |= lasting + reach <= deadly;
      }
    } else {
      over |= width < limit;
    }
    if (over && spoilt == null) {
      spoilt = place;
    }
  }

  /** For faces that are round or touched in odd ways. */
  private void slowly(Cell cell) {
    CutCell result = new CellCutter(region, turned.then(Motion.shift(turned.of(at)))).cutAtEdge(cell);
    if (result != null) {
      boolean whole = true;
      for (CutCell.Part part : result.parts()) {
        if (part.kind() != PieceKind.WHOLE) {
          whole = false;
          measure(NarrowWidth.of(part.outline(), part.holes()), null,
              turned.inverse().of(part.outline().box().centre()));
        }
      }
      cuts += whole ? 0 : 1;
    }
  }
}
