// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.List;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.TextColumn;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/**
 * Notes set in the place that a sheet has for them, as large as fits; paragraphs that find no room even in the smallest
 * letters go on in a strip above the drawing. Nothing is left out.
 *
 * @param column what stands in the place for notes
 * @param more what stands in the strip
 */
record SheetNotes(TextColumn column, TextColumn more) {
  /** Least height of capitals in notes, mm; about letters of 7 pt. */
  static final double SMALLEST = 1.8;

  private static final double LARGEST = 2;
  private static final double STEP = 0.1;

  /**
   * Sets notes.
   *
   * @param place the place for notes, mm
   * @param width width of the strip, mm
   */
  static SheetNotes of(List<String> notes, Box place, double width, Lettering lettering) throws IOException {
    for (double height = LARGEST; height > SMALLEST - STEP / 2; height -= STEP) {
      TextColumn column = TextColumn.of(notes, Type.plain(height), place.width(), lettering);
      if (column.height() <= place.height()) {
        return new SheetNotes(column, new TextColumn(List.of(), column.type()));
      }
    }
    Type type = Type.plain(SMALLEST);
    int kept = notes.size() - 1;
    while (kept > 0
        && TextColumn.of(notes.subList(0, kept), type, place.width(), lettering).height() > place.height()) {
      kept--;
    }
    return new SheetNotes(TextColumn.of(notes.subList(0, kept), type, place.width(), lettering),
        TextColumn.of(notes.subList(kept, notes.size()), type, width, lettering));
  }

  /** Draws both parts from the tops of their places down. */
  void draw(Canvas canvas, Box place, Box strip) throws IOException {
    column.draw(canvas, new Vec(place.minX(), place.maxY()));
    more.draw(canvas, new Vec(strip.minX(), strip.maxY()));
  }
}
