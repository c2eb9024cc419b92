// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.io.IOException;

/** The frame around the drawing, inside the margins of the sheet. */
public final class SheetFrame {
  private SheetFrame() {}

  /** Draws the frame. */
  public static void draw(Canvas canvas) throws IOException {
    canvas.box(canvas.size().frame(), Pen.HEAVY);
  }
}
