// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.util.List;

/**
 * One tile and the pieces that are made from it.
 *
 * @param tile the kind, as in {@link muralbench.setout.Piece#tile}
 * @param width of the tile as the pieces lie on it, mm
 * @param height of the tile, mm
 * @param pieces the pieces, at least one; of a tile that is sawn from below and from the left
 * @param asLaid whether the pieces lie on the tile as they lie on the wall; otherwise they are sawn apart by cuts that
 *     go right through
 */
public record MadeTile(String tile, double width, double height, List<MadePiece> pieces, boolean asLaid) {
  public MadeTile {
    pieces = List.copyOf(pieces);
  }
}
