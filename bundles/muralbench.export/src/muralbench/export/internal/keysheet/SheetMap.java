// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.List;
import java.util.OptionalInt;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.Placing;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/** A small map of a panel that lies on several sheets: which sheet shows which part. */
final class SheetMap {
  private static final Type TITLE = Type.plain(1.8);
  private static final double HEAD = 3.5;
  private static final double HERE = 0.82;
  private static final double LARGEST_NUMBER = 2.3;

  private final Canvas canvas;
  private final PanelPlan plan;
  private final int firstNumber;

  /** @param firstNumber number of the panel's first sheet in the whole document */
  SheetMap(Canvas canvas, PanelPlan plan, int firstNumber) {
    this.canvas = canvas;
    this.plan = plan;
    this.firstNumber = firstNumber;
  }

  /** Draws the map into {@code place} with the window of {@code here} in grey. */
  void draw(Box place, SheetPlan here, String title) throws IOException {
    canvas.text(title, TITLE, new Vec(place.centre().x(), place.maxY() - TITLE.height()), Canvas.Align.CENTRE);
    Box room = new Box(place.minX(), place.minY(), place.maxX(), place.maxY() - HEAD);
    Box panel = plan.facts().box();
    double reduction = Math.max(panel.width() / room.width(), panel.height() / room.height());
    Placing placing = new Placing(reduction, panel.centre(), room.centre());
    canvas.fill(placing.of(here.window()), HERE);
    for (int row = 0; row < plan.grid().rows(); row++) {
      for (int column = 0; column < plan.grid().columns(); column++) {
        window(placing.of(plan.grid().window(row, column)), plan.sheetAt(row, column));
      }
    }
    canvas.stroke(List.of(placing.of(plan.facts().panel().spec().outline())), Pen.THICK);
  }

  private void window(Box window, OptionalInt sheet) throws IOException {
    canvas.box(window, Pen.THIN);
    if (sheet.isPresent()) {
      String number = Integer.toString(firstNumber + sheet.getAsInt());
      int digits = Integer.toString(firstNumber + plan.sheets().size()).length();
      double height = Math.min(LARGEST_NUMBER, Math.min(window.height() * 0.6, window.width() / digits * 0.9));
      Vec foot = new Vec(window.centre().x(), window.centre().y() - height / 2);
      canvas.text(number, Type.plain(height), foot, Canvas.Align.CENTRE);
    }
  }
}
