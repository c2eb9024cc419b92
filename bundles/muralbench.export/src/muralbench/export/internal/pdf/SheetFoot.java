// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.io.IOException;
import java.util.List;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/**
 * The foot of sheets that hold a list of drawings: above the title block the check line with a note over it on the left, and
 * what to heed on the right.
 *
 * @param size the sheet
 */
public record SheetFoot(SheetSize size) {
  /** Kept free at the edges, mm. */
  public static final double INSET = 2;

  private static final double TITLE = 18;
  private static final double NOTES = 19;
  private static final Type WORDS = Type.plain(1.8);

  /** The part of the frame above the foot. */
  public Box body() {
    Box frame = size.frame();
    return new Box(frame.minX(), frame.minY() + TITLE + NOTES, frame.maxX(), frame.maxY());
  }

  /** Draws the foot. */
  public void draw(Canvas canvas, String note, String caution, TitleBlock title) throws IOException {
    Box frame = size.frame();
    double top = body().minY();
    canvas.line(new Vec(frame.minX(), top), new Vec(frame.maxX(), top), Pen.THICK);
    CheckLine.draw(canvas, new Vec(frame.minX() + INSET, top - NOTES + INSET));
    TextColumn.of(List.of(note), WORDS, CheckLine.LENGTH, canvas.lettering())
        .draw(canvas, new Vec(frame.minX() + INSET, top - INSET));
    double left = frame.minX() + CheckLine.LENGTH + 3 * INSET;
    TextColumn.of(List.of(caution), WORDS, frame.maxX() - left - INSET, canvas.lettering())
        .draw(canvas, new Vec(left, top - INSET));
    title.draw(canvas, new Box(frame.minX(), frame.minY(), frame.maxX(), frame.minY() + TITLE));
  }
}
