// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import muralbench.setout.PieceKind;
import muralbench.setout.geometry.Contour;

/**
 * Cut pieces of one shape: equal after turning, never after mirroring, since the face is glazed. The face is painted
 * before it is cut, so that every piece says how its tile is turned to lie as drawn. The drawing shows the first piece
 * as it hangs, turned only where its face hangs askew.
 *
 * @param number from 1 in the cutting list
 * @param kind how the pieces are made
 * @param tile id of the tile kind they are cut from
 * @param area of one piece, mm²
 * @param face the uncut face with its lower left corner at (0, 0), mm
 * @param outline edge of the piece as it lies on the face, counter-clockwise
 * @param holes holes inside, clockwise
 * @param placings all pieces of this shape, in order
 */
public record CutGroup(int number, PieceKind kind, String tile, double area, Contour face, Contour outline,
    List<Contour> holes, List<Placing> placings) {
  private static final double HUNDREDTHS = 100;

  public CutGroup {
    holes = List.copyOf(holes);
    placings = List.copyOf(placings);
  }

  /**
   * How the tile of a piece is laid before it is cut.
   *
   * @param key key of the piece
   * @param turn by how much the tile, its glazed face up, is turned from how it hangs to lie as drawn, degrees
   *     counter-clockwise from 0 to below 360; the least turn if several will do
   */
  public record Placing(String key, double turn) {}

  /**
   * Pieces whose tiles are laid alike.
   *
   * @param turn as in {@link Placing}, to 0.01 degrees
   * @param keys keys of the pieces, in order
   */
  public record Lot(double turn, List<String> keys) {
    public Lot {
      keys = List.copyOf(keys);
    }
  }

  /** The keys of all pieces of this shape, in order. */
  public List<String> keys() {
    return placings.stream().map(Placing::key).toList();
  }

  /** The pieces by the turn of their tiles, in the order of the first piece of each lot. */
  public List<Lot> lots() {
    Map<Double, List<String>> lots = new LinkedHashMap<>();
    for (Placing placing : placings) {
      double turn = Math.rint(placing.turn() * HUNDREDTHS) / HUNDREDTHS % 360;
      lots.computeIfAbsent(turn, any -> new ArrayList<>()).add(placing.key());
    }
    return lots.entrySet().stream().map(lot -> new Lot(lot.getKey(), lot.getValue())).toList();
  }

  /** Whether the pieces are whole faces with curved edges, which are cut to shape from larger blanks. */
  public boolean fromBlank() {
    return holes.isEmpty() && !face.straight() && CutShape.same(face, outline);
  }

  /** Whether the face lies on the drawn one in a single way, as a wedge does, so that it cannot be laid wrongly. */
  public boolean fitsOneWay() {
    return CutShape.fitsOneWay(face);
  }
}
