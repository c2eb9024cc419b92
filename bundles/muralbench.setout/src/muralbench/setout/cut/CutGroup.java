// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.List;
import muralbench.setout.PieceKind;
import muralbench.setout.geometry.Contour;

/**
 * Cut pieces of one shape: equal after turning, never after mirroring, since the face is glazed.
 *
 * @param number from 1 in the cutting list
 * @param kind how the pieces are made
 * @param tile id of the tile kind they are cut from
 * @param area of one piece, mm²
 * @param face the uncut face with its lower left corner at (0, 0), mm
 * @param outline edge of the piece as it lies on the face, counter-clockwise
 * @param holes holes inside, clockwise
 * @param keys the keys of all pieces of this shape, in order
 */
public record CutGroup(int number, PieceKind kind, String tile, double area, Contour face, Contour outline,
    List<Contour> holes, List<String> keys) {
  public CutGroup {
    holes = List.copyOf(holes);
    keys = List.copyOf(keys);
  }
}
