// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.rulers;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;

/** Chooses the marks of a ruler so that figures never crowd. */
public final class Ticks {
  /**
   * A mark.
   *
   * @param at where, mm
   * @param label its figure; empty for a small mark
   */
  public record Tick(double at, String label) {}

  /** Distance between figures, mm or in, and the parts it is divided into. */
  private record Step(double size, int parts) {}

  private static final String NO_INCHES = " 0 in";
  private static final double SMALLEST = 1e-6;
  private static final int LABEL_PIXELS = 64;
  private static final Step[] INCHES = {new Step(1.0 / 4, 4), new Step(1.0 / 2, 4), new Step(1, 8), new Step(2, 4),
      new Step(3, 3), new Step(6, 6), new Step(12, 4), new Step(24, 2), new Step(48, 4), new Step(120, 10)};
  private static final Step[] MILLIMETRES = {new Step(5, 5), new Step(10, 10), new Step(20, 4), new Step(50, 5),
      new Step(100, 10), new Step(200, 4), new Step(500, 5), new Step(1000, 10), new Step(2000, 4), new Step(5000, 5)};

  private Ticks() {}

  /**
   * The marks between two places.
   *
   * @param from first place, mm
   * @param to last place, mm
   * @param pixelsPerMillimetre the zoom
   */
  public static List<Tick> between(double from, double to, double pixelsPerMillimetre, LengthUnit unit) {
    Step step = step(pixelsPerMillimetre, unit);
    double small = step.size() * unit.millimetres() / step.parts();
    List<Tick> ticks = new ArrayList<>();
    for (long i = (long) Math.ceil(from / small); i * small <= to; i++) {
      double at = i * small;
      ticks.add(new Tick(at, Math.floorMod(i, (long) step.parts()) == 0 ? figure(at, unit) : ""));
    }
    return ticks;
  }

  /** As short as can be: no inches after whole feet, no unit at 0. */
  private static String figure(double at, LengthUnit unit) {
    if (Math.abs(at) < SMALLEST) {
      return "0";
    }
    String text = LengthText.shownInFeet(at, unit);
    return text.endsWith(NO_INCHES) ? text.substring(0, text.length() - NO_INCHES.length()) : text;
  }

  private static Step step(double pixelsPerMillimetre, LengthUnit unit) {
    Step[] steps = unit == LengthUnit.INCH ? INCHES : MILLIMETRES;
    for (Step step : steps) {
      if (step.size() * unit.millimetres() * pixelsPerMillimetre >= LABEL_PIXELS) {
        return step;
      }
    }
    return steps[steps.length - 1];
  }
}
