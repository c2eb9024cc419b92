// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.TextFit;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** Draws datum line, plumb line, centre line and match lines of one sheet, with their names. */
final class ReferenceLines {
  /** The level datum line. */
  static final Pen DATUM = new Pen(0.35, 0, List.of(6.0, 1.0, 1.0, 1.0));
  /** The plumb line through the datum point. */
  static final Pen PLUMB = new Pen(0.25, 0, List.of(4.0, 1.0, 1.0, 1.0));
  /** The centre line of a panel. */
  static final Pen CENTRE = new Pen(0.18, 0, List.of(8.0, 1.5, 2.0, 1.5));
  /** The line where two sheets meet. */
  static final Pen MATCH = new Pen(0.7, 0, List.of(7.0, 2.0, 1.5, 2.0));

  private static final Type NAME = Type.plain(2.1);
  private static final double ROW = 3.4;
  private static final double SAME = 0.5;
  /** Legs of the mark of a corner, mm. */
  private static final double CORNER = 2.4;

  private final Canvas canvas;
  private final PanelPlan plan;
  private final SheetPlan sheet;
  private final int firstNumber;
  private final Messages texts = Messages.of(ReferenceLines.class);

  /** @param firstNumber number of the panel's first sheet in the whole document */
  ReferenceLines(Canvas canvas, PanelPlan plan, SheetPlan sheet, int firstNumber) {
    this.canvas = canvas;
    this.plan = plan;
    this.sheet = sheet;
    this.firstNumber = firstNumber;
  }

  /** Draws level and upright lines of reference. */
  void drawReferences(LengthUnit units) throws IOException {
    Box shown = sheet.shown();
    Box window = sheet.window();
    Vec datum = plan.facts().first().datum();
    double middle = plan.facts().box().centre().x();
    double gutter = sheet.gutters().labels();
    if (datum.y() >= window.minY() && datum.y() <= window.maxY()) {
      level(sheet.placing().y(datum.y()), shown, gutter, units);
    } else {
      lowestCourse(shown, gutter, units);
    }
    if (plan.facts().floor() && window.grown(SAME).holds(Box.of(plan.facts().zero(), plan.facts().zero()))) {
      canvas.fill(List.of(cornerMark(sheet.placing().of(plan.facts().zero()))), 0);
    }
    boolean same = Math.abs(sheet.placing().x(datum.x()) - sheet.placing().x(middle)) < SAME;
    if (!same && middle >= window.minX() && middle <= window.maxX()) {
      double plumb = sheet.placing().x(datum.x());
      upright(sheet.placing().x(middle), shown, gutter + 1, CENTRE, texts.text("centre.name"), plumb);
    }
    if (datum.x() >= window.minX() && datum.x() <= window.maxX()) {
      String name = named(same ? "plumb.centre.name" : "plumb.name");
      upright(sheet.placing().x(datum.x()), shown, gutter + 1 + ROW, PLUMB, name, Double.NaN);
    }
  }

  private void level(double y, Box shown, double gutter, LengthUnit units) throws IOException {
    double end = shown.maxX() + gutter + 1;
    canvas.line(new Vec(shown.minX() - gutter - 1, y), new Vec(end, y), DATUM);
    canvas.fill(List.of(levelMark(end, y)), 0);
    besideLevel(named("datum.name", "height", height(plan.facts().first().datum().y(), units)), y, end);
  }

  /** Where another sheet has the datum, the height of the lowest course line of this one. */
  private void lowestCourse(Box shown, double gutter, LengthUnit units) throws IOException {
    Optional<Double> line = RunningDimensions.courseLines(plan.facts()).stream()
        .filter(place -> place >= sheet.window().minY() && place <= sheet.window().maxY()).findFirst();
    if (line.isPresent()) {
      double y = sheet.placing().y(line.get());
      double end = shown.maxX() + gutter + 1;
      canvas.line(new Vec(shown.maxX(), y), new Vec(end, y), Pen.THIN);
      canvas.stroke(List.of(levelMark(end, y)), Pen.THIN);
      besideLevel(named("course.name", "height", height(line.get(), units), "sheet",
          firstNumber + plan.firstTileSheet()), y, end);
    }
  }

  /** A height above the finished floor or, on floors, a distance from the marked corner. */
  private String height(double y, LengthUnit units) {
    return LengthText.shown(plan.facts().floor() ? y - plan.facts().zero().y() : y, units);
  }

  private String named(String key, Object... values) {
    return texts.text(plan.facts().floor() ? key + ".floor" : key, values);
  }

  private static Contour levelMark(double x, double y) {
    return Contour.polygon(List.of(new Vec(x, y), new Vec(x + 1.6, y + 2.4), new Vec(x - 1.6, y + 2.4)));
  }

  /** The mark at the lower left corner from which all dimensions of a floor count. */
  static Contour cornerMark(Vec corner) {
    return Contour.polygon(List.of(corner, corner.plus(new Vec(-CORNER, 0)), corner.plus(new Vec(0, -CORNER))));
  }

  private void besideLevel(String name, double y, double end) throws IOException {
    Box drawing = sheet.layout().drawing();
    double half = canvas.lettering().width(name, NAME) / 2 + 1;
    double place = Math.max(drawing.minY() + half, Math.min(drawing.maxY() - 8 - half, y));
    canvas.textUpwards(name, NAME, new Vec(end + 5.5, place), Canvas.Align.CENTRE);
  }

  /** An upright line with its name above it, or beside it where a line at {@code other} would run through the name. */
  private void upright(double x, Box shown, double above, Pen pen, String name, double other) throws IOException {
    double top = shown.maxY() + above;
    canvas.line(new Vec(x, shown.minY() - 1), new Vec(x, top), pen);
    Box drawing = sheet.layout().drawing();
    double half = canvas.lettering().width(name, NAME) / 2 + 1;
    double aside = Math.abs(other - x) < half ? Math.copySign(half, x - other) : 0;
    double place = Math.max(drawing.minX() + half, Math.min(drawing.maxX() - half, x + aside));
    canvas.text(name, NAME, new Vec(place, top + 0.6), Canvas.Align.CENTRE);
  }

  /** Draws the lines where other sheets go on. */
  void drawMatchLines() throws IOException {
    Box box = sheet.shown();
    double out = ElevationDrawing.OVERLAP + 1;
    int row = sheet.row();
    int column = sheet.column();
    match(row, column - 1, new Vec(box.minX(), box.minY() - out), new Vec(box.minX(), box.maxY() + out), -1);
    match(row, column + 1, new Vec(box.maxX(), box.minY() - out), new Vec(box.maxX(), box.maxY() + out), 1);
    match(row - 1, column, new Vec(box.minX() - out, box.minY()), new Vec(box.maxX() + out, box.minY()), -1);
    match(row + 1, column, new Vec(box.minX() - out, box.maxY()), new Vec(box.maxX() + out, box.maxY()), 1);
  }

  private void match(int row, int column, Vec from, Vec to, int side) throws IOException {
    OptionalInt neighbour = plan.sheetAt(row, column);
    if (neighbour.isEmpty()) {
      return;
    }
    canvas.line(from, to, MATCH);
    boolean upright = from.x() == to.x();
    double room = from.distance(to) - 4;
    String full = texts.text("match.name", "sheet", firstNumber + neighbour.getAsInt());
    String name = new TextFit(canvas.lettering()).shortened(full, NAME, room);
    double width = canvas.lettering().width(name, NAME);
    Vec middle = from.towards(to, 0.5);
    double half = NAME.height() / 2 + 0.5;
    Box place = upright ? new Box(middle.x() - half, middle.y() - width / 2 - 1, middle.x() + half,
        middle.y() + width / 2 + 1) : new Box(middle.x() - width / 2 - 1, middle.y() - half,
        middle.x() + width / 2 + 1, middle.y() + half);
    Vec off = upright ? new Vec(side * (ElevationDrawing.OVERLAP + 2), 0)
        : new Vec(0, side * (ElevationDrawing.OVERLAP + 2));
    draw(name, new Box(place.minX() + off.x(), place.minY() + off.y(), place.maxX() + off.x(),
        place.maxY() + off.y()), upright);
  }

  private void draw(String name, Box place, boolean upright) throws IOException {
    canvas.fill(place, 1);
    if (upright) {
      canvas.textUpwards(name, NAME, new Vec(place.maxX() - 0.5, place.centre().y()), Canvas.Align.CENTRE);
    } else {
      canvas.text(name, NAME, new Vec(place.centre().x(), place.minY() + 0.5), Canvas.Align.CENTRE);
    }
  }
}
