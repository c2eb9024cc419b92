// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import java.io.IOException;
import java.util.List;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/**
 * The title block of a sheet: rows of named fields. It stands in the lower right corner of the frame.
 *
 * @param rows from top to bottom; the fields of a row from left to right
 */
public record TitleBlock(List<List<Field>> rows) {
  private static final Type NAME = Type.plain(1.8);
  /** Kept clear on both sides of a text, mm. */
  private static final double INSET = 1.7;
  /** Kept clear above and below, mm. */
  private static final double AIR = 1.1;
  private static final double LARGEST = 3.2;
  private static final double SMALLEST = 2;

  /**
   * One field.
   *
   * @param name what the value is, in small letters
   * @param value may be empty
   * @param share of the row's width, 0 to 1
   */
  public record Field(String name, String value, double share) {}

  public TitleBlock {
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** Draws the block; the rows share the height of {@code place} evenly. */
  public void draw(Canvas canvas, Box place) throws IOException {
    canvas.fill(place, 1);
    canvas.box(place, Pen.THICK);
    double height = place.height() / rows.size();
    for (int i = 0; i < rows.size(); i++) {
      double top = place.maxY() - i * height;
      double left = place.minX();
      for (Field field : rows.get(i)) {
        Box cell = new Box(left, top - height, left + field.share() * place.width(), top);
        draw(canvas, field, cell);
        left = cell.maxX();
      }
    }
  }

  private static void draw(Canvas canvas, Field field, Box cell) throws IOException {
    canvas.box(cell, Pen.THIN);
    double left = cell.minX() + INSET;
    canvas.text(field.name(), NAME, new Vec(left, cell.maxY() - AIR - NAME.height()), Canvas.Align.LEFT);
    double room = cell.width() - 2 * INSET;
    double height = Math.min(LARGEST, cell.height() - NAME.height() - 3.2 * AIR);
    while (height > SMALLEST && canvas.lettering().width(field.value(), Type.bold(height)) > room) {
      height -= 0.1;
    }
    Type type = Type.bold(height);
    String shown = new TextFit(canvas.lettering()).shortened(field.value(), type, room);
    canvas.text(shown, type, new Vec(left, cell.minY() + 1.3 * AIR), Canvas.Align.LEFT);
  }
}
