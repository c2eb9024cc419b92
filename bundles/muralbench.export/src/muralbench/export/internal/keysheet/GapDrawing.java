// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.List;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.Placing;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.PanelGap;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;

/**
 * Dimensions between neighbours on the wall: in the gap along its dimension line, or upright in it, or above it,
 * whichever has room first. A gap without room for any is left to the running dimensions below.
 */
final class GapDrawing {
  private static final Type TEXT = Type.plain(2.1);
  private static final double TICK = 2;
  private static final double OFF = 0.8;
  /** How far a text above a gap keeps from the panels, mm. */
  private static final double ABOVE = 2.5;

  private final Canvas canvas;
  private final Placing placing;
  private final Board board;
  private final LengthUnit units;

  /** A drawing; {@code board} knows the panels, and the texts are put on it. */
  GapDrawing(Canvas canvas, Placing placing, Board board, LengthUnit units) {
    this.canvas = canvas;
    this.placing = placing;
    this.board = board;
    this.units = units;
  }

  void draw(List<PanelGap> gaps) throws IOException {
    for (PanelGap gap : gaps) {
      if (gap.across() > 0) {
        draw(gap);
      }
    }
  }

  private void draw(PanelGap gap) throws IOException {
    Box left = placing.of(gap.left().spec().outline().box());
    Box right = placing.of(gap.right().spec().outline().box());
    double low = Math.max(left.minY(), right.minY());
    double high = Math.min(left.maxY(), right.maxY());
    Box free = new Box(left.maxX(), low, right.minX(), high);
    String text = LengthText.shown(gap.across(), units);
    double width = canvas.lettering().width(text, TEXT);
    if (free.width() >= width + 2 * OFF) {
      along(text, width, free);
    } else if (free.width() >= TEXT.height() + 2 * OFF && free.height() >= width + 4 * OFF) {
      upright(text, width, free);
    } else {
      above(text, width, free, Math.max(left.maxY(), right.maxY()));
    }
  }

  private void along(String text, double width, Box free) throws IOException {
    Vec middle = free.centre();
    line(free, middle.y());
    Vec anchor = new Vec(middle.x(), middle.y() + OFF);
    canvas.text(text, TEXT, anchor, Canvas.Align.CENTRE);
    board.addText(new Box(free.minX(), middle.y() - TICK / 2, free.maxX(), anchor.y() + TEXT.height()));
  }

  private void upright(String text, double width, Box free) throws IOException {
    Vec middle = free.centre();
    double foot = middle.y() - width / 2;
    line(free, foot - OFF);
    canvas.textUpwards(text, TEXT, new Vec(middle.x() + TEXT.height() / 2, foot), Canvas.Align.LEFT);
    board.addText(new Box(free.minX(), foot - OFF - TICK / 2, free.maxX(), foot + width));
  }

  private void above(String text, double width, Box free, double top) throws IOException {
    double x = free.centre().x();
    double foot = top + ABOVE;
    Box box = new Box(x - TEXT.height() / 2 - OFF, foot, x + TEXT.height() / 2 + OFF, foot + width);
    if (board.clearOfTexts(box) && board.clearOfPieces(box)) {
      canvas.line(new Vec(x, free.maxY() - TICK), new Vec(x, foot - OFF / 2), Pen.THIN);
      canvas.textUpwards(text, TEXT, new Vec(x + TEXT.height() / 2, foot), Canvas.Align.LEFT);
      board.addText(box);
    }
  }

  /** The dimension line with a tick at either end. */
  private void line(Box free, double y) throws IOException {
    canvas.lines(List.of(new Line(new Vec(free.minX(), y), new Vec(free.maxX(), y)), tick(free.minX(), y),
        tick(free.maxX(), y)), Pen.THIN);
  }

  private static Line tick(double x, double y) {
    return new Line(new Vec(x - TICK / 4, y - TICK / 2), new Vec(x + TICK / 4, y + TICK / 2));
  }
}
