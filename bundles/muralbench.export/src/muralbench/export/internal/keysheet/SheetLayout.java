// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import muralbench.export.internal.pdf.CheckLine;
import muralbench.export.internal.pdf.SheetSize;
import muralbench.setout.geometry.Box;

/**
 * How a key sheet is divided, mm on paper. The title block stands in the lower right corner, check line and legend in
 * the lower left; notes lie between them on wide sheets and above them on narrow ones; a line on safety runs along the
 * foot.
 *
 * @param size the sheet
 * @param drawing where the elevation goes, with everything around it
 * @param notes notes in words
 * @param legend legend and small sheet map, above the check line
 * @param title title block
 * @param safety line on safety
 */
record SheetLayout(SheetSize size, Box drawing, Box notes, Box legend, Box title, Box safety) {
  /** Width of the legend without the sheet map, mm. */
  static final double LEGEND = 62;

  private static final double NARROW = 240;
  private static final double STRIP = 45;
  private static final double NOTES_ROW = 25;
  private static final double LEFT_COLUMN = CheckLine.LENGTH + 4;
  private static final double TITLE = 80;
  private static final double TITLE_NARROW = 72;
  private static final double GAP = 2;

  /** Where notes go; without a sheet map those of a wide sheet take its place as well. */
  Box notes(boolean withMap) {
    boolean wide = notes.minX() > legend.minX();
    return withMap || !wide ? notes : new Box(legend.minX() + LEGEND, legend.minY(), notes.maxX(), notes.maxY());
  }

  /** The division of a sheet. */
  static SheetLayout of(SheetSize size) {
    Box frame = size.frame();
    boolean narrow = frame.width() < NARROW;
    double foot = frame.minY() + (narrow ? 8.5 : 4.8);
    double top = foot + STRIP;
    double titleLeft = frame.maxX() - (narrow ? TITLE_NARROW : TITLE);
    double column = frame.minX() + LEFT_COLUMN;
    Box safety = new Box(frame.minX() + GAP, frame.minY(), frame.maxX() - GAP, foot);
    Box legend = new Box(frame.minX() + GAP, foot + CheckLine.HEIGHT + 1, column, top - 1);
    Box title = new Box(titleLeft, foot, frame.maxX(), top);
    if (!narrow) {
      Box notes = new Box(column + GAP, foot + 1, titleLeft - GAP, top - 1);
      Box drawing = new Box(frame.minX(), top, frame.maxX(), frame.maxY());
      return new SheetLayout(size, drawing, notes, legend, title, safety);
    }
    Box notes = new Box(frame.minX() + GAP, top + 1, frame.maxX() - GAP, top + NOTES_ROW - 1);
    Box drawing = new Box(frame.minX(), top + NOTES_ROW, frame.maxX(), frame.maxY());
    return new SheetLayout(size, drawing, notes, legend, title, safety);
  }
}
