// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.List;
import muralbench.base.length.LengthUnit;
import muralbench.editor.internal.properties.Entries.Range;
import muralbench.model.BackingBoard;
import muralbench.model.BoardMaterial;
import muralbench.model.EdgeProtection;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;

/** The lines about the board of a panel that can be taken down. */
final class BoardLines {
  private static final String GROUP = "board";

  private final Panel panel;
  private final LengthUnit unit;

  BoardLines(Panel panel, LengthUnit unit) {
    this.panel = panel;
    this.unit = unit;
  }

  List<Property> lines() {
    return List.of(
        Entries.choice("board.material", GROUP, BoardMaterial.class, () -> board().getMaterial(),
            to -> owned().setMaterial(to)),
        Entries.lengthOrBlank("board.thickness", GROUP, unit, 0, () -> board().getThickness(),
            to -> owned().setThickness(to)),
        Entries.numberOrBlank("board.density", GROUP, 0, () -> board().getDensity(), to -> owned().setDensity(to)),
        Entries.length("board.reveal", GROUP, unit, Range.ANY, () -> board().getReveal(),
            to -> owned().setReveal(to)),
        Entries.choice("board.edge", GROUP, EdgeProtection.class, () -> board().getEdge(), to -> owned().setEdge(to)),
        Entries.numberOrBlank("board.hanger", GROUP, 0, () -> board().getHangerCapacity(),
            to -> owned().setHangerCapacity(to)));
  }

  /** The board, or one that says what holds where there is none. */
  private BackingBoard board() {
    return panel.getBoard() == null ? MuralFactory.eINSTANCE.createBackingBoard() : panel.getBoard();
  }

  private BackingBoard owned() {
    if (panel.getBoard() == null) {
      panel.setBoard(MuralFactory.eINSTANCE.createBackingBoard());
    }
    return panel.getBoard();
  }
}
