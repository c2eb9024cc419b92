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
 * The first sheets: all panels together, and the index of sheets. Panels of a floor lie in another plane and have a
 * plan of their own below the wall, to the same scale.
 *
 * @param layout how the sheet is divided
 * @param scale the scale of all views
 * @param views the wall, the floor, or one below the other
 * @param indexRows lines of the index that fit on the first sheet
 */
record WallPlan(SheetLayout layout, DrawingScale scale, List<View> views, int indexRows) {
  /**
   * The panels of one plane.
   *
   * @param slot the part of the sheet for the view and everything around it
   * @param placing how the plane lies on the sheet
   * @param window what is shown, in the plane
   * @param drawn the panels
   * @param wall whether they stand on a wall, so that heights count from the finished floor
   */
  record View(Box slot, Placing placing, Box window, List<PanelSetOut> drawn, boolean wall) {}

  /** Distance kept between elevation and dimensions, mm. */
  static final double GUTTER = 4;
  /** Height of a line of the index, mm. */
  static final double ROW = 4.6;

  private static final double MOST_INDEX = 0.45;

  /** The plan for a mural on a paper: whichever direction of the paper gives the larger views. */
  static WallPlan of(List<PanelSetOut> panels, Paper paper, LengthUnit units) {
    List<List<PanelSetOut>> planes = new ArrayList<>();
    for (boolean floor : new boolean[] {false, true}) {
      List<PanelSetOut> plane = panels.stream().filter(panel -> onFloor(panel) == floor).toList();
      if (!plane.isEmpty()) {
        planes.add(plane);
      }
    }
    List<WallPlan> plans = new ArrayList<>();
    for (boolean landscape : new boolean[] {true, false}) {
      plans.add(of(planes, SheetLayout.of(SheetSize.of(paper, landscape)), units, panels.size()));
    }
    return plans.stream().min(Comparator.comparingDouble(plan -> plan.scale().reduction())).orElseThrow();
  }

  private static WallPlan of(List<List<PanelSetOut>> planes, SheetLayout layout, LengthUnit units, int lines) {
    int rows = Math.min(lines + 1, (int) (MOST_INDEX * layout.drawing().height() / ROW));
    Box drawing = layout.drawing();
    Box all = new Box(drawing.minX(), drawing.minY() + rows * ROW + 4, drawing.maxX(), drawing.maxY());
    List<Box> windows = planes.stream().map(WallPlan::window).toList();
    Box room = new Gutters(GUTTER).room(all);
    double around = all.height() - room.height();
    double height = Math.max(1, all.height() - planes.size() * around);
    double width = windows.stream().mapToDouble(Box::width).max().orElseThrow();
    double least = Math.max(width / room.width(), windows.stream().mapToDouble(Box::height).sum() / height);
    List<DrawingScale> scales = DrawingScale.forWalls(units);
    DrawingScale scale = scales.stream().filter(wide -> wide.reduction() >= least).findFirst()
        .orElse(scales.get(scales.size() - 1));
    double spare = (height - windows.stream().mapToDouble(Box::height).sum() / scale.reduction()) / planes.size();
    List<View> views = new ArrayList<>();
    double top = all.maxY();
    for (int i = 0; i < planes.size(); i++) {
      double foot = top - around - spare - windows.get(i).height() / scale.reduction();
      Box slot = new Box(all.minX(), foot, all.maxX(), top);
      Placing placing =
          new Placing(scale.reduction(), windows.get(i).centre(), new Gutters(GUTTER).room(slot).centre());
      views.add(new View(slot, placing, windows.get(i), planes.get(i), !onFloor(planes.get(i).get(0))));
      top = foot;
    }
    return new WallPlan(layout, scale, List.copyOf(views), rows);
  }

  private static boolean onFloor(PanelSetOut panel) {
    return panel.spec().surface().equals("floor");
  }

  private static Box window(List<PanelSetOut> plane) {
    Box window = plane.stream().map(panel -> panel.spec().outline().box()).reduce(Box::and).orElseThrow();
    return onFloor(plane.get(0)) ? window : window.and(new Vec(window.minX(), 0));
  }

  /** Whether a wall is among the views. */
  boolean wall() {
    return views.stream().anyMatch(View::wall);
  }

  /** Whether a floor is among the views. */
  boolean floor() {
    return views.stream().anyMatch(view -> !view.wall());
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
