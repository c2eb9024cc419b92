// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.io.IOException;
import muralbench.base.Messages;
import muralbench.setout.geometry.Vec;

/** A line of exactly 100 mm with which a print is checked for true size. */
public final class CheckLine {
  /** Length of the line, mm. */
  public static final double LENGTH = 100;

  /** Height of line and words together, mm. */
  public static final double HEIGHT = 7;

  private static final Type WORDS = Type.plain(1.8);
  private static final double TICK = 1.5;

  private CheckLine() {}

  /** Draws the line with its words below; {@code corner} is the lower left corner of both. */
  public static void draw(Canvas canvas, Vec corner) throws IOException {
    double y = corner.y() + HEIGHT - TICK;
    double right = corner.x() + LENGTH;
    canvas.line(new Vec(corner.x(), y), new Vec(right, y), Pen.MEDIUM);
    for (double x = corner.x(); x < right + 1; x += LENGTH / 10) {
      double tick = x == corner.x() || x > right - 1 ? TICK : TICK / 2;
      canvas.line(new Vec(x, y - tick), new Vec(x, y + tick), Pen.MEDIUM);
    }
    Messages texts = Messages.of(CheckLine.class);
    Vec middle = new Vec(corner.x() + LENGTH / 2, corner.y());
    canvas.text(texts.text("check.line"), WORDS, middle.plus(new Vec(0, 0.6)), Canvas.Align.CENTRE);
  }
}
