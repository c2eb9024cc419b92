// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import muralbench.setout.geometry.Vec;

/**
 * All sheets of a panel.
 *
 * @param facts the panel
 * @param scale the scale of the elevation
 * @param grid how it is parted
 * @param sheets the sheets from top left to bottom right; windows without pieces have none
 */
record PanelPlan(PanelFacts facts, DrawingScale scale, WindowGrid grid, List<SheetPlan> sheets) {
  private static final double SAME = 0.05;

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

  /** The number within this panel, from 0, of the sheet that shows the first tile. */
  int firstTileSheet() {
    Vec middle = facts.first().piece().box().centre();
    return sheetAt(grid.row(middle.y()), grid.column(middle.x())).orElse(0);
  }

  /** The sheet with the zero of the dimensions across, if {@code here} does not show it. */
  OptionalInt zeroAcross(SheetPlan here) {
    double zero = facts.zero().x();
    if (zero >= here.window().minX() - SAME && zero <= here.window().maxX() + SAME) {
      return OptionalInt.empty();
    }
    int row = grid.row(facts.zero().y());
    int column = grid.column(zero);
    OptionalInt best = sheetAt(row, column);
    return best.isPresent() ? best
        : IntStream.range(0, sheets.size()).filter(i -> sheets.get(i).column() == column).findFirst();
  }

  /** The sheet with the zero of the dimensions up, if {@code here} does not show it. */
  OptionalInt zeroUp(SheetPlan here) {
    double zero = facts.zero().y();
    if (zero >= here.window().minY() - SAME && zero <= here.window().maxY() + SAME) {
      return OptionalInt.empty();
    }
    int row = grid.row(zero);
    OptionalInt best = sheetAt(row, grid.column(facts.zero().x()));
    return best.isPresent() ? best
        : IntStream.range(0, sheets.size()).filter(i -> sheets.get(i).row() == row).findFirst();
  }
}
