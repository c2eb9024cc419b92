// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.List;
import java.util.OptionalInt;

/**
 * All sheets of a panel.
 *
 * @param facts the panel
 * @param scale the scale of the elevation
 * @param grid how it is parted
 * @param sheets the sheets from top left to bottom right; windows without pieces have none
 */
record PanelPlan(PanelFacts facts, DrawingScale scale, WindowGrid grid, List<SheetPlan> sheets) {
  PanelPlan {
    sheets = List.copyOf(sheets);
  }

  /** The number within this panel, from 0, of the sheet that shows a window. */
  OptionalInt sheetAt(int row, int column) {
    for (int i = 0; i < sheets.size(); i++) {
      if (sheets.get(i).row() == row && sheets.get(i).column() == column) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }
}
