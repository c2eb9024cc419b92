// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import muralbench.base.length.LengthUnit;
import muralbench.export.Paper;
import muralbench.export.internal.pdf.Placing;
import muralbench.export.internal.pdf.SheetSize;
import muralbench.setout.PanelSetOut;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/**
 * The first sheets: all panels of the wall together, and the index of sheets. Panels of a floor lie in another plane
 * and are drawn only if there is no wall.
 *
 * @param layout how the sheet is divided
 * @param scale the scale of the elevation
 * @param placing how the wall lies on the sheet
 * @param window what is shown, in the wall plane
 * @param drawn the panels that are drawn
 * @param wall whether they stand on a wall, so that heights count from the finished floor
 * @param indexRows lines of the index that fit on the first sheet
 */
record WallPlan(SheetLayout layout, DrawingScale scale, Placing placing, Box window, List<PanelSetOut> drawn,
    boolean wall, int indexRows) {
  /** Distance kept between elevation and dimensions, mm. */
  static final double GUTTER = 4;
  /** Height of a line of the index, mm. */
  static final double ROW = 4.6;

  private static final double MOST_INDEX = 0.45;

  /** The plan for a mural on a paper: whichever direction of the paper gives the larger elevation. */
  static WallPlan of(List<PanelSetOut> panels, Paper paper, LengthUnit units) {
    List<PanelSetOut> walls =
        panels.stream().filter(panel -> !panel.spec().surface().equals("floor")).toList();
    List<PanelSetOut> drawn = walls.isEmpty() ? panels : walls;
    List<WallPlan> plans = new ArrayList<>();
    for (boolean landscape : new boolean[] {true, false}) {
      SheetLayout layout = SheetLayout.of(SheetSize.of(paper, landscape));
      plans.add(of(drawn, layout, units, !walls.isEmpty(), panels.size()));
    }
    return plans.stream().min(Comparator.comparingDouble(plan -> plan.scale().reduction())).orElseThrow();
  }

  private static WallPlan of(List<PanelSetOut> drawn, SheetLayout layout, LengthUnit units, boolean wall, int lines) {
    Box window = drawn.stream().map(panel -> panel.spec().outline().box()).reduce(Box::and).orElseThrow();
    if (wall) {
      window = window.and(new Vec(window.minX(), 0));
    }
    int rows = Math.min(lines + 1, (int) (MOST_INDEX * layout.drawing().height() / ROW));
    Box drawing = layout.drawing();
    Box room = new Gutters(GUTTER)
        .room(new Box(drawing.minX(), drawing.minY() + rows * ROW + 4, drawing.maxX(), drawing.maxY()));
    double least = Math.max(window.width() / room.width(), window.height() / room.height());
    List<DrawingScale> scales = DrawingScale.forWalls(units);
    DrawingScale scale = scales.stream().filter(wide -> wide.reduction() >= least).findFirst()
        .orElse(scales.get(scales.size() - 1));
    return new WallPlan(layout, scale, new Placing(scale.reduction(), window.centre(), room.centre()), window, drawn,
        wall, rows);
  }

  /** How many lines of the index, heading not counted, a sheet holds that shows nothing else. */
  int rowsOfFurtherSheets() {
    return (int) ((layout.drawing().height() - 16) / ROW) - 1;
  }

  /** How many sheets the index takes, the first included. */
  int sheets(int panels) {
    int left = Math.max(0, panels - (indexRows - 1));
    return 1 + (left + rowsOfFurtherSheets() - 1) / rowsOfFurtherSheets();
  }
}
