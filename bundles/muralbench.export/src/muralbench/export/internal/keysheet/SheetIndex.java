// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.List;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.TextFit;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/** The index of sheets: a table of panels with their size, pieces, height above the floor, scale and sheets. */
final class SheetIndex {
  private static final Type HEAD = Type.bold(1.9);
  private static final Type CELL = Type.plain(2.1);
  private static final List<String> COLUMNS =
      List.of("index.panel", "index.size", "index.height", "index.pieces", "index.scale", "index.sheets");
  private static final double[] SHARES = {0.27, 0.22, 0.14, 0.13, 0.14, 0.1};

  private final Messages texts;
  private final LengthUnit units;

  SheetIndex(Messages texts, LengthUnit units) {
    this.texts = texts;
    this.units = units;
  }

  /** The cells of a panel's line. */
  List<String> line(PanelPlan plan, int firstNumber) {
    Box box = plan.facts().panel().spec().outline().box();
    int last = firstNumber + plan.sheets().size() - 1;
    String sheets = firstNumber == last ? Integer.toString(last)
        : texts.text("index.sheets.value", "first", firstNumber, "last", last);
    String size = texts.text("index.size.value", "width", shown(box.width()), "height", shown(box.height()));
    String pieces = texts.text("index.pieces.value", "pieces", plan.facts().panel().pieces().size(),
        "cut", plan.facts().panel().cut());
    boolean floor = plan.facts().panel().spec().surface().equals("floor");
    String height = floor ? texts.text("index.height.floor") : shown(box.minY());
    return List.of(PrintTexts.name(plan.facts().panel().spec()), size, height, pieces, plan.scale().name(), sheets);
  }

  private String shown(double length) {
    return LengthText.shown(length, units);
  }

  /** Draws the table with its heading from the top of {@code place} down. */
  void draw(Canvas canvas, Box place, List<List<String>> lines) throws IOException {
    row(canvas, place, 0, COLUMNS.stream().map(texts::text).toList(), HEAD);
    for (int i = 0; i < lines.size(); i++) {
      row(canvas, place, i + 1, lines.get(i), CELL);
    }
  }

  private static void row(Canvas canvas, Box place, int number, List<String> cells, Type type) throws IOException {
    double foot = place.maxY() - (number + 1) * WallPlan.ROW;
    double left = place.minX();
    TextFit fit = new TextFit(canvas.lettering());
    for (int i = 0; i < cells.size(); i++) {
      double width = SHARES[i] * place.width();
      String shown = fit.shortened(cells.get(i), type, width - 2);
      canvas.text(shown, type, new Vec(left + 1, foot + 1.3), Canvas.Align.LEFT);
      left += width;
    }
    canvas.line(new Vec(place.minX(), foot), new Vec(place.maxX(), foot), number == 0 ? Pen.MEDIUM : Pen.THIN);
  }
}
