// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import muralbench.setout.PanelSetOut;

/**
 * Which pieces of a panel are made from which tile.
 *
 * @param tiles the tiles, in the order of the first piece of each
 * @param least for each kind of tile how many there have to be by area: no tile gives more than its face, and of two
 *     pieces larger than half a face each needs a tile of its own
 */
public record MadeUp(List<MadeTile> tiles, Map<String, Integer> least) {
  public MadeUp {
    tiles = List.copyOf(tiles);
    least = Map.copyOf(least);
  }

  /**
   * How a panel is made up. Painted before cutting, and whatever cannot be sawn apart, takes a tile for each cell of the
   * bond. Painted after cutting, cut pieces of rectangular faces share tiles as rectangles: a piece that is no rectangle
   * takes up the rectangle around it, one with a hole in it a whole tile. Cuts go right through and take the kerf away;
   * pieces are turned by quarters as need be and never turned over, for the face is glazed. A side that is to keep a
   * factory edge and is not cut in the set-out lies on an edge of the tile. Of one tile at most eight pieces are made.
   */
  public static MadeUp of(PanelSetOut panel) {
    return new MakingUp(panel).made();
  }

  /** The number of tiles of {@link #of}, without working out where the pieces lie on them. */
  public static int count(PanelSetOut panel) {
    return new MakingUp(panel).count();
  }

  /** The number of tiles by kind. */
  public Map<String, Integer> counts() {
    Map<String, Integer> counts = new TreeMap<>();
    tiles.forEach(tile -> counts.merge(tile.tile(), 1, Integer::sum));
    return counts;
  }
}
