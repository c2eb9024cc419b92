// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import muralbench.pattern.motif.Orientation;
import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Box;

/**
 * How a tile lies: its drawing, mirrored left to right or not, then turned. A mirrored tile cannot be had by turning
 * another one; it is painted as the other hand.
 *
 * @param quarters quarter turns counter-clockwise, 0 to 3
 * @param mirrored whether it is the other hand
 */
public record TileTurn(int quarters, boolean mirrored) {
  /** As drawn. */
  public static final TileTurn AS_DRAWN = new TileTurn(0, false);
  /** Upside down. */
  public static final TileTurn HALF = new TileTurn(2, false);
  /** Mirrored in an upright line, across the run. */
  public static final TileTurn ACROSS = new TileTurn(0, true);
  /** Mirrored in the middle line, along the run: the upright mirror image, upside down. */
  public static final TileTurn ALONG = new TileTurn(2, true);

  public TileTurn {
    quarters = Math.floorMod(quarters, 4);
  }

  /** Some quarter turns counter-clockwise. */
  public static TileTurn quarter(int quarters) {
    return new TileTurn(quarters, false);
  }

  /** The same as an orientation of a motif. */
  public Orientation orientation() {
    return Orientation.of(mirrored, quarters);
  }

  /** This, and after it {@code next}. */
  public TileTurn then(TileTurn next) {
    Orientation both = orientation().then(next.orientation());
    return new TileTurn(both.quarterTurns(), both.mirrored());
  }

  /**
   * The movement that takes a drawing to its tile on the wall.
   *
   * @param cell the whole tile on the wall; the drawing has its lower left corner at (0, 0) and is as large as the
   *     cell, or as the cell on its side after an odd number of quarter turns
   */
  public Isometry on(Box cell) {
    boolean onSide = orientation().swapsSides();
    double width = onSide ? cell.height() : cell.width();
    double height = onSide ? cell.width() : cell.height();
    return orientation().in(width, height).then(Isometry.shift(cell.minX(), cell.minY()));
  }
}
