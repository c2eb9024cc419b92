// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.Placing;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;

/** Draws running dimensions below and to the left of an elevation. */
final class DimensionDrawing {
  private static final Type TEXT = Type.plain(2.1);
  private static final Type ZERO = Type.bold(2.1);
  private static final Pen EXTENSION = Pen.THIN.grey(0.55);
  private static final double SPACING = 3.2;
  private static final double OFF = 1.5;
  private static final double TICK = 2;
  private static final double LEG = 1.8;

  private final Canvas canvas;
  private final Placing placing;
  private final Box window;
  private final double gutter;
  private final LengthUnit units;

  /**
   * A drawing.
   *
   * @param window the part of the work that shows, in its own coordinates
   * @param gutter distance kept from it, mm on paper
   */
  DimensionDrawing(Canvas canvas, Placing placing, Box window, double gutter, LengthUnit units) {
    this.canvas = canvas;
    this.placing = placing;
    this.window = window;
    this.gutter = gutter;
    this.units = units;
  }

  /** Draws dimensions along the lower edge; their texts read upwards. */
  void across(RunningDimensions dimensions) throws IOException {
    Box shown = placing.of(window);
    double base = shown.minY() - gutter - OFF;
    List<RunningDimensions.Mark> marks = dimensions.marks(window.minX(), window.maxX(), units);
    double[] wanted = marks.stream().mapToDouble(mark -> placing.x(mark.place())).toArray();
    double[] placed = RunningDimensions.spread(wanted, SPACING);
    canvas.lines(extensions(wanted, x -> new Line(new Vec(x, base), new Vec(x, shown.minY()))), EXTENSION);
    List<Line> lines = new ArrayList<>(List.of(new Line(new Vec(shown.minX(), base), new Vec(shown.maxX(), base))));
    for (int i = 0; i < wanted.length; i++) {
      Vec foot = new Vec(wanted[i], base - TICK / 2);
      lines.add(new Line(new Vec(wanted[i], base + TICK / 2), foot));
      lines.add(new Line(foot, new Vec(placed[i], base - TICK / 2 - LEG)));
      Type type = type(marks.get(i), dimensions);
      Vec anchor = new Vec(placed[i] + type.height() / 2, base - TICK / 2 - LEG - 0.6);
      canvas.textUpwards(marks.get(i).text(), type, anchor, Canvas.Align.RIGHT);
    }
    canvas.lines(lines, Pen.THIN);
  }

  /** Draws dimensions along the left edge. */
  void up(RunningDimensions dimensions) throws IOException {
    Box shown = placing.of(window);
    double base = shown.minX() - gutter - OFF;
    List<RunningDimensions.Mark> marks = dimensions.marks(window.minY(), window.maxY(), units);
    double[] wanted = marks.stream().mapToDouble(mark -> placing.y(mark.place())).toArray();
    double[] placed = RunningDimensions.spread(wanted, SPACING);
    canvas.lines(extensions(wanted, y -> new Line(new Vec(base, y), new Vec(shown.minX(), y))), EXTENSION);
    List<Line> lines = new ArrayList<>(List.of(new Line(new Vec(base, shown.minY()), new Vec(base, shown.maxY()))));
    for (int i = 0; i < wanted.length; i++) {
      Vec foot = new Vec(base - TICK / 2, wanted[i]);
      lines.add(new Line(new Vec(base + TICK / 2, wanted[i]), foot));
      lines.add(new Line(foot, new Vec(base - TICK / 2 - LEG, placed[i])));
      Type type = type(marks.get(i), dimensions);
      Vec anchor = new Vec(base - TICK / 2 - LEG - 0.6, placed[i] - type.height() / 2);
      canvas.text(marks.get(i).text(), type, anchor, Canvas.Align.RIGHT);
    }
    canvas.lines(lines, Pen.THIN);
  }

  @FunctionalInterface
  private interface Extension {
    Line at(double place);
  }

  private static List<Line> extensions(double[] places, Extension extension) {
    List<Line> lines = new ArrayList<>();
    for (double place : places) {
      lines.add(extension.at(place));
    }
    return lines;
  }

  private static Type type(RunningDimensions.Mark mark, RunningDimensions dimensions) {
    return mark.place() == dimensions.datum() ? ZERO : TEXT;
  }
}
