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
 * @param more strip below the heading where notes go on that find no room; mostly without height
 */
record SheetLayout(SheetSize size, Box drawing, Box notes, Box legend, Box title, Box safety, Box more) {
  /** Width of the legend without the sheet map, mm. */
  static final double LEGEND = 62;

  private static final double NARROW = 240;
  private static final double STRIP = 42.6;
  private static final double STRIP_NARROW = 45;
  private static final double NOTES_ROW = 25;
  private static final double LEFT_COLUMN = CheckLine.LENGTH + 4;
  private static final double TITLE = 80;
  private static final double TITLE_NARROW = 72;
  private static final double GAP = 2;
  /** Height of the heading with its air. */
  private static final double HEADING = 7;

  /** Where notes go; without a sheet map those of a wide sheet take its place as well. */
  Box notes(boolean withMap) {
    boolean wide = notes.minX() > legend.minX();
    return withMap || !wide ? notes : new Box(legend.minX() + LEGEND, legend.minY(), notes.maxX(), notes.maxY());
  }

  /** The same division with a strip of some height for more notes, mm; the drawing gives way. */
  SheetLayout withMore(double height) {
    Box frame = size.frame();
    Box lower = new Box(drawing.minX(), drawing.minY(), drawing.maxX(), frame.maxY() - height);
    return new SheetLayout(size, lower, notes, legend, title, safety, strip(frame, height));
  }

  private static Box strip(Box frame, double height) {
    double top = frame.maxY() - HEADING;
    return new Box(frame.minX() + 3, top - height, frame.maxX() - 3, top);
  }

  /** The division of a sheet. */
  static SheetLayout of(SheetSize size) {
    Box frame = size.frame();
    boolean narrow = frame.width() < NARROW;
    double foot = frame.minY() + (narrow ? 8.5 : 7.2);
    double top = foot + (narrow ? STRIP_NARROW : STRIP);
    double titleLeft = frame.maxX() - (narrow ? TITLE_NARROW : TITLE);
    double column = frame.minX() + LEFT_COLUMN;
    Box safety = new Box(frame.minX() + GAP, frame.minY(), frame.maxX() - GAP, foot);
    Box legend = new Box(frame.minX() + GAP, foot + CheckLine.HEIGHT + 1, column, top - 1);
    Box title = new Box(titleLeft, foot, frame.maxX(), top);
    if (!narrow) {
      Box notes = new Box(column + GAP, foot + 1, titleLeft - GAP, top - 1);
      Box drawing = new Box(frame.minX(), top, frame.maxX(), frame.maxY());
      return new SheetLayout(size, drawing, notes, legend, title, safety, strip(frame, 0));
    }
    Box notes = new Box(frame.minX() + GAP, top + 1, frame.maxX() - GAP, top + NOTES_ROW - 1);
    Box drawing = new Box(frame.minX(), top + NOTES_ROW, frame.maxX(), frame.maxY());
    return new SheetLayout(size, drawing, notes, legend, title, safety, strip(frame, 0));
  }
}
