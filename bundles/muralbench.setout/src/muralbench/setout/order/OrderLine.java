// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.math.BigDecimal;
import java.util.List;

/**
 * What to order of one kind of tile.
 *
 * @param tile the kind, as in {@link muralbench.setout.Piece#tile}
 * @param laid tiles that the pieces come from
 * @param least how many there have to be at least, by area
 * @param percents the percentages of spares that went into it, in growing order
 * @param ordered tiles to order, spares included and rounded up to whole boxes
 * @param box tiles in a box, 0 for single tiles
 */
public record OrderLine(String tile, int laid, int least, List<BigDecimal> percents, int ordered, int box) {
  public OrderLine {
    percents = List.copyOf(percents);
  }

  /** Tiles over those that are laid. */
  public int spares() {
    return ordered - laid;
  }

  /** Boxes to order, 0 for single tiles. */
  public int boxes() {
    return box == 0 ? 0 : ordered / box;
  }
}
