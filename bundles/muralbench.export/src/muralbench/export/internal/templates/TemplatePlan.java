// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.templates;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/**
 * Where templates lie on sheets: side by side in rows from the top; one that is larger than a sheet takes several,
 * which overlap by {@link #OVERLAP}.
 */
final class TemplatePlan {
  /** How much of a divided template neighbouring sheets both show, mm. */
  static final double OVERLAP = 10;
  /** Room for the words below a template, mm. */
  static final double WORDS = 12;
  /** The least width of a template with its words, mm. */
  static final double NARROWEST = 58;
  private static final double GAP = 6;

  private final Box body;
  private final List<Part> parts = new ArrayList<>();
  private int sheet;
  private double left;
  private double top;
  private double row;

  /**
   * What one sheet shows of a template.
   *
   * @param sheet number of the sheet, from 0
   * @param place where it is drawn, words included, mm on paper
   * @param shown the part of the face that shows, in the coordinates of the template, mm
   * @param part number of this part, from 1
   * @param of number of parts; 1 for a template that is whole
   */
  record Part(int sheet, CutGroup group, Box place, Box shown, int part, int of) {
    /** Where the lower left corner of {@link #shown} is drawn. */
    Vec corner() {
      return new Vec(place.minX(), place.minY() + WORDS);
    }
  }

  private TemplatePlan(Box body) {
    this.body = body;
    left = body.minX();
    top = body.maxY();
  }

  /** The parts on a sheet with this room for them. */
  static List<Part> of(List<CutGroup> groups, Box body) {
    TemplatePlan plan = new TemplatePlan(body);
    groups.forEach(plan::place);
    return List.copyOf(plan.parts);
  }

  private void place(CutGroup group) {
    Box face = around(group);
    if (face.width() > body.width() || face.height() + WORDS > body.height()) {
      divide(group, face);
      return;
    }
    double width = Math.max(NARROWEST, face.width());
    double height = face.height() + WORDS;
    if (left > body.minX() && left + width > body.maxX()) {
      nextRow();
    }
    if (top < body.maxY() && top - height < body.minY()) {
      nextSheet();
    }
    parts.add(new Part(sheet, group, new Box(left, top - height, left + width, top), face, 1, 1));
    left += width + GAP;
    row = Math.max(row, height);
  }

  /** The face and the piece. */
  static Box around(CutGroup group) {
    return group.face().box().and(group.outline().box());
  }

  private void divide(CutGroup group, Box face) {
    if (top < body.maxY() || left > body.minX()) {
      nextSheet();
    }
    double width = body.width();
    double height = body.height() - WORDS;
    int columns = count(face.width(), width);
    int rows = count(face.height(), height);
    for (int i = 0; i < columns * rows; i++) {
      double x = face.minX() + i % columns * (width - OVERLAP);
      double y = face.minY() + i / columns * (height - OVERLAP);
      Box shown = new Box(x, y, Math.min(face.maxX(), x + width), Math.min(face.maxY(), y + height));
      Box place = new Box(body.minX(), body.maxY() - shown.height() - WORDS, body.minX() + shown.width(), body.maxY());
      parts.add(new Part(sheet, group, place, shown, i + 1, columns * rows));
      sheet++;
    }
    // The next template starts on the sheet after the last part.
    left = body.minX();
    top = body.maxY();
    row = 0;
  }

  private static int count(double length, double window) {
    return length <= window ? 1 : (int) Math.ceil((length - OVERLAP) / (window - OVERLAP));
  }

  private void nextRow() {
    left = body.minX();
    top -= row + GAP;
    row = 0;
  }

  private void nextSheet() {
    sheet++;
    left = body.minX();
    top = body.maxY();
    row = 0;
  }
}
