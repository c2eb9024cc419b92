// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import muralbench.setout.geometry.Contour;

/**
 * A band of border tiles along the edge of a panel, already laid; the field is set out inside it.
 *
 * @param field the outline of the field inside the band, a joint away from it, in the wall plane
 * @param tiles the tiles of the band, row by row from the outer edge, each row clockwise from the lower left corner
 */
public record BandSpec(Contour field, List<BandTile> tiles) {
  public BandSpec {
    tiles = List.copyOf(tiles);
  }

  /**
   * One tile of a band.
   *
   * @param row number of the row, from 1 at the outer edge
   * @param number number in the row, from 1
   * @param tile id of the tile kind
   * @param whole the uncut face, in the wall plane, counter-clockwise
   * @param face what the band leaves of it, such as half a tile on the diagonal of a corner; counter-clockwise
   */
  public record BandTile(int row, int number, String tile, Contour whole, Contour face) {}

  /** The largest number of each row. */
  public Map<Integer, Integer> lastNumbers() {
    Map<Integer, Integer> last = new HashMap<>();
    tiles.forEach(tile -> last.merge(tile.row(), tile.number(), Math::max));
    return last;
  }
}
