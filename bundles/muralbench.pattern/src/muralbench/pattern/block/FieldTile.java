// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.util.Set;
import muralbench.pattern.motif.Colourway;
import muralbench.pattern.motif.Edge;
import muralbench.pattern.motif.Motif;
import muralbench.pattern.motif.Orientation;

/**
 * A tile of a field of blocks.
 *
 * @param column tiles from the left; in a field on point, along the direction up to the right
 * @param row tiles from the bottom; in a field on point, along the direction up to the left
 * @param motif the drawing on the tile
 * @param orientation how the drawing lies on the tile
 * @param colourway its colours
 * @param cutBy in a field on point the sides of the field that cut the tile from corner to corner; otherwise empty
 */
public record FieldTile(int column, int row, Motif motif, Orientation orientation, Colourway colourway,
    Set<Edge> cutBy) {
  public FieldTile {
    cutBy = Set.copyOf(cutBy);
  }
}
