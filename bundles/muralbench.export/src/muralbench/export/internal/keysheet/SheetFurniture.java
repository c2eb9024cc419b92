// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.List;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.CheckLine;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.SheetFrame;
import muralbench.export.internal.pdf.TextFit;
import muralbench.export.internal.pdf.TitleBlock;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/** What stands around the drawing on every key sheet: frame, heading, notes, check line, title block, safety line. */
final class SheetFurniture {
  private static final Type HEADING = Type.bold(3);
  private static final Type SUBHEADING = Type.plain(2.1);

  private final Canvas canvas;
  private final SheetLayout layout;

  SheetFurniture(Canvas canvas, SheetLayout layout) {
    this.canvas = canvas;
    this.layout = layout;
  }

  void draw(TitleBlock title, List<String> notes, Box place, String safety) throws IOException {
    canvas.line(new Vec(layout.drawing().minX(), layout.drawing().minY()),
        new Vec(layout.drawing().maxX(), layout.drawing().minY()), Pen.MEDIUM);
    SheetNotes.of(notes, place, layout.more().width(), canvas.lettering()).draw(canvas, place, layout.more());
    Box foot = layout.safety();
    Box line = new Box(foot.minX(), foot.minY(), foot.maxX(), foot.maxY() - 0.7);
    SheetNotes.of(List.of(safety), line, line.width(), canvas.lettering()).draw(canvas, line, line);
    CheckLine.draw(canvas, new Vec(layout.legend().minX(), layout.safety().maxY()));
    title.draw(canvas, layout.title());
    canvas.line(new Vec(layout.drawing().minX(), layout.safety().maxY()),
        new Vec(layout.drawing().maxX(), layout.safety().maxY()), Pen.THIN);
    SheetFrame.draw(canvas);
  }

  /** Writes the heading of the drawing, with something smaller at its right. */
  void heading(String text, String aside) throws IOException {
    Box drawing = layout.drawing();
    double base = layout.size().frame().maxY() - 2 - HEADING.height();
    double asideWidth = canvas.lettering().width(aside, SUBHEADING);
    String fit = new TextFit(canvas.lettering())
        .shortened(text, HEADING, drawing.width() - asideWidth - 10);
    canvas.text(fit, HEADING, new Vec(drawing.minX() + 3, base), Canvas.Align.LEFT);
    canvas.text(aside, SUBHEADING, new Vec(drawing.maxX() - 3, base), Canvas.Align.RIGHT);
  }
}
