// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.List;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;

/** Sorts cut pieces into groups of one shape. */
public final class CutList {
  private CutList() {}

  /**
   * The groups of all cut pieces of a mural, in the order of the first piece of each. Two pieces are of one shape if a
   * turn and a shift lay one on the other and both tile faces on each other, to 0.01 mm.
   */
  public static List<CutGroup> of(MuralSetOut setOut) {
    CutGroups groups = new CutGroups();
    for (PanelSetOut panel : setOut.panels()) {
      for (Piece piece : panel.pieces()) {
        if (piece.kind() != PieceKind.WHOLE) {
          groups.add(piece);
        }
      }
    }
    return groups.groups();
  }
}
