// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.Placing;
import muralbench.export.internal.pdf.TextFit;
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
  /** Room for words beside an axis, mm. */
  private static final double WORDS = 12.8;

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
    across(dimensions, "");
  }

  /** As {@link #across(RunningDimensions)}; {@code zero} tells where the zero is if another sheet shows it. */
  void across(RunningDimensions dimensions, String zero) throws IOException {
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
    if (!zero.isEmpty()) {
      beyondAcross(zero, dimensions, placed);
    }
  }

  private void beyondAcross(String zero, RunningDimensions dimensions, double[] placed) throws IOException {
    Box shown = placing.of(window);
    double base = shown.minY() - gutter - OFF;
    boolean left = dimensions.datum() < window.minX();
    double edge = left ? Math.min(shown.minX(), placed.length > 0 ? placed[0] : shown.minX())
        : Math.max(shown.maxX(), placed.length > 0 ? placed[placed.length - 1] : shown.maxX());
    List<String> words = words(zero);
    for (int i = 0; i < words.size(); i++) {
      double x = left ? edge - SPACING * (words.size() - i) : edge + SPACING * (i + 1);
      Vec anchor = new Vec(x + ZERO.height() / 2, base - TICK / 2 - LEG - 0.6);
      canvas.textUpwards(words.get(i), TEXT, anchor, Canvas.Align.RIGHT);
    }
    double end = left ? edge - SPACING * (words.size() + 1) : edge + SPACING * (words.size() + 1);
    arrow(new Vec(left ? shown.minX() : shown.maxX(), base), new Vec(end, base));
  }

  /** Draws dimensions along the left edge. */
  void up(RunningDimensions dimensions) throws IOException {
    up(dimensions, "");
  }

  /** As {@link #up(RunningDimensions)}; {@code zero} tells where the zero is if another sheet shows it. */
  void up(RunningDimensions dimensions, String zero) throws IOException {
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
    if (!zero.isEmpty()) {
      beyondUp(zero, dimensions, placed);
    }
  }

  private void beyondUp(String zero, RunningDimensions dimensions, double[] placed) throws IOException {
    Box shown = placing.of(window);
    double base = shown.minX() - gutter - OFF;
    boolean below = dimensions.datum() < window.minY();
    double edge = below ? Math.min(shown.minY(), placed.length > 0 ? placed[0] : shown.minY())
        : Math.max(shown.maxY(), placed.length > 0 ? placed[placed.length - 1] : shown.maxY());
    List<String> words = words(zero);
    for (int i = 0; i < words.size(); i++) {
      double y = below ? edge - SPACING * (i + 1) : edge + SPACING * (words.size() - i);
      Vec anchor = new Vec(base - TICK / 2 - LEG - 0.6, y - ZERO.height() / 2);
      canvas.text(words.get(i), TEXT, anchor, Canvas.Align.RIGHT);
    }
    double end = below ? edge - SPACING * words.size() : edge + SPACING * words.size();
    arrow(new Vec(base, below ? shown.minY() : shown.maxY()), new Vec(base, end));
  }

  /** A text in lines that find room beside an axis. */
  private List<String> words(String text) throws IOException {
    return new TextFit(canvas.lettering()).wrapped(text, TEXT, WORDS);
  }

  /** The axis goes on with an arrow towards the zero. */
  private void arrow(Vec from, Vec to) throws IOException {
    Vec back = from.minus(to).times(1.6 / from.distance(to));
    Vec aside = new Vec(-back.y() / 3, back.x() / 3);
    canvas.lines(List.of(new Line(from, to), new Line(to, to.plus(back).plus(aside)),
        new Line(to, to.plus(back).minus(aside))), Pen.THIN);
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
