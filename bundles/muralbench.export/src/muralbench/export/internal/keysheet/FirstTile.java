// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.geometry.Vec;

/**
 * The tile that is set first, and the datum point at its lower left corner, through which the level datum line and the
 * plumb line run. With a given origin it is the tile there, if that is whole; otherwise the whole tile nearest to the
 * centre line in the lowest course that has one (common practice: start on a level line above the cuts, at the
 * middle). Rings start in the middle: their datum is the centre of the face, and the first tile is the disc or,
 * without one, the key stone of the innermost ring.
 *
 * @param piece the piece
 * @param datum lower left corner of its face, or the centre of the rings, in the wall plane
 */
record FirstTile(Piece piece, Vec datum) {
  private static final double SAME_PLACE = 0.01;

  static FirstTile of(PanelSetOut panel) {
    return of(panel, piece -> true);
  }

  /** As {@link #of(PanelSetOut)}, but only among the pieces that are {@code wanted}, if there is a whole one. */
  static FirstTile of(PanelSetOut panel, Predicate<Piece> wanted) {
    List<Piece> whole =
        panel.field().stream().filter(piece -> piece.kind() == PieceKind.WHOLE).filter(wanted).toList();
    if (whole.isEmpty()) {
      whole = panel.field().stream().filter(piece -> piece.kind() == PieceKind.WHOLE).toList();
    }
    if (panel.spec().origin().given()) {
      for (Piece piece : whole) {
        if (corner(piece).distance(panel.origin()) < SAME_PLACE) {
          return new FirstTile(piece, corner(piece));
        }
      }
    }
    if (panel.concentric()) {
      Piece inmost = panel.field().stream()
          .min(Comparator.comparingInt(Piece::course).thenComparingInt(Piece::position)).orElseThrow();
      return new FirstTile(inmost, panel.origin());
    }
    double middle = panel.spec().outline().box().centre().x();
    Piece first = (whole.isEmpty() ? panel.field() : whole).stream()
        .min(Comparator.<Piece>comparingInt(Piece::course)
            .thenComparingDouble(piece -> Math.rint(Math.abs(piece.face().box().centre().x() - middle) * 100))
            .thenComparingInt(Piece::position))
        .orElseThrow();
    return new FirstTile(first, corner(first));
  }

  private static Vec corner(Piece piece) {
    return piece.face().segments().get(0).start();
  }
}
