// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.work;

import java.util.List;
import muralbench.pattern.border.TileTurn;
import muralbench.setout.BandSpec;

/**
 * A border as it is laid.
 *
 * @param band its tiles for the set-out
 * @param painted what is on them, in the same order
 */
public record LaidBorder(BandSpec band, List<Painted> painted) {
  public LaidBorder {
    painted = List.copyOf(painted);
  }

  /**
   * What is painted on a tile.
   *
   * @param row row of the tile, from 1 at the outer edge
   * @param number its number in the row
   * @param motif id of the motif, of the colour of a plain row, or empty for a plain corner
   * @param colourway colourway of the motif, empty for the colours as drawn
   * @param strip which tile of a motif that covers several, from 0
   * @param turn how the drawing lies on the wall; on a curve against the direction of the piece
   */
  public record Painted(int row, int number, String motif, String colourway, int strip, TileTurn turn) {}
}
