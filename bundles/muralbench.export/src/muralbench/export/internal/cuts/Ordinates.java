// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.Type;
import muralbench.setout.geometry.Vec;

/**
 * Distances from one edge of the uncut face, each once, in the order of their places from the left or from below. They
 * all start from that edge, so that roundings do not add up.
 */
final class Ordinates {
  /** Letters of all measures on a cut. */
  static final Type TYPE = Type.plain(2);

  /**
   * One distance.
   *
   * @param at its place along the axis, mm
   * @param from the nearest point, along the other axis, that is measured by it, mm; its line is drawn from there
   * @param text the distance rounded, without the unit
   */
  record Ordinate(double at, double from, String text) {}

  private final List<Ordinate> all = new ArrayList<>();

  private Ordinates(List<Vec> points, double zero, ToDoubleFunction<Vec> distance, ToDoubleFunction<Vec> at,
      ToDoubleFunction<Vec> other, LengthUnit unit) {
    TreeMap<Double, Ordinate> found = new TreeMap<>();
    found.put(0.0, new Ordinate(zero, 0, "0"));
    for (Vec point : points) {
      double rounded = LengthText.rounded(distance.applyAsDouble(point), unit) + 0.0;
      Ordinate next = new Ordinate(at.applyAsDouble(point), other.applyAsDouble(point), text(rounded, unit));
      found.merge(rounded, next, (a, b) -> a.from() <= b.from() ? a : b);
    }
    all.addAll(zero == 0 ? found.values() : found.descendingMap().values());
  }

  /** Distances from the left or right edge. */
  static Ordinates across(List<Vec> points, Datum datum, LengthUnit unit) {
    return new Ordinates(points, datum.corner().x(), datum::across, Vec::x, Vec::y, unit);
  }

  /** Distances from the lower or upper edge. */
  static Ordinates up(List<Vec> points, Datum datum, LengthUnit unit) {
    return new Ordinates(points, datum.corner().y(), datum::up, Vec::y, Vec::x, unit);
  }

  /** A length rounded as the cutter reads it, without its unit. */
  static String text(double millimetres, LengthUnit unit) {
    String shown = LengthText.shown(millimetres, unit);
    return shown.endsWith(' ' + unit.symbol()) ? shown.substring(0, shown.length() - unit.symbol().length() - 1)
        : shown;
  }

  List<Ordinate> all() {
    return all;
  }

  /** Width of the longest text, mm. */
  double widest(Lettering lettering) throws IOException {
    double widest = 0;
    for (Ordinate ordinate : all) {
      widest = Math.max(widest, lettering.width(ordinate.text(), TYPE));
    }
    return widest;
  }
}
