// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import muralbench.base.length.LengthUnit;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * Points by which a curved cut is marked out: its ends, and where it meets lines at round distances from an edge of the
 * uncut face: the left or right edge if the curve is wider than high, else the lower or upper one.
 */
final class CurveStations {
  private static final List<Double> INCHES = List.of(0.5, 1.0, 2.0, 4.0, 6.0, 12.0);
  private static final List<Double> MILLIMETRES = List.of(10.0, 25.0, 50.0, 100.0, 200.0, 250.0);
  private static final int MOST = 7;
  private static final int SAMPLES = 48;
  private static final double APART = 1;

  private CurveStations() {}

  /** The distance between lines on a face, mm: the smallest round one that gives at most seven. */
  static double step(Box face, LengthUnit unit) {
    List<Double> steps = unit == LengthUnit.INCH ? INCHES : MILLIMETRES;
    double longer = Math.max(face.width(), face.height());
    return steps.stream().map(step -> step * unit.millimetres()).filter(step -> longer / step <= MOST).findFirst()
        .orElse(longer / MOST);
  }

  /** The points of a curve from one end to the other, at least these two, away from the edge that is measured from. */
  static List<Vec> of(Segment curve, double step, Datum datum) {
    Box box = curve.box();
    boolean across = box.width() >= box.height();
    DoubleUnaryOperator run = across ? t -> datum.across(curve.at(t)) : t -> datum.up(curve.at(t));
    List<Vec> points = new ArrayList<>(List.of(curve.start()));
    for (int i = 0; i < SAMPLES; i++) {
      double from = run.applyAsDouble((double) i / SAMPLES) / step;
      double to = run.applyAsDouble((i + 1.0) / SAMPLES) / step;
      if (Math.floor(from) != Math.floor(to)) {
        double station = Math.max(Math.floor(from), Math.floor(to)) * step;
        addApart(points, curve.at(meeting(run, station, (double) i / SAMPLES, (i + 1.0) / SAMPLES)));
      }
    }
    if (points.size() > 1 && points.get(points.size() - 1).distance(curve.end()) < APART) {
      points.remove(points.size() - 1);
    }
    points.add(curve.end());
    if (run.applyAsDouble(1) < run.applyAsDouble(0)) {
      Collections.reverse(points);
    }
    return points;
  }

  private static void addApart(List<Vec> points, Vec point) {
    if (points.get(points.size() - 1).distance(point) >= APART) {
      points.add(point);
    }
  }

  private static double meeting(DoubleUnaryOperator run, double station, double from, double to) {
    double a = from;
    double b = to;
    boolean above = run.applyAsDouble(a) >= station;
    for (int i = 0; i < 50; i++) {
      double middle = (a + b) / 2;
      if (run.applyAsDouble(middle) >= station == above) {
        a = middle;
      } else {
        b = middle;
      }
    }
    return (a + b) / 2;
  }
}
