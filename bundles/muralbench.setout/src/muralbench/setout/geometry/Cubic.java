// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A cubic Bezier curve with the control points {@code start}, {@code c1}, {@code c2}, {@code end}. */
public record Cubic(Vec start, Vec c1, Vec c2, Vec end) implements Segment {
  /** The cubic that draws the same curve as a quadratic Bezier curve. */
  public static Cubic ofQuadratic(Vec start, Vec control, Vec end) {
    return new Cubic(start, start.towards(control, 2.0 / 3), end.towards(control, 2.0 / 3), end);
  }

  @Override
  public Vec at(double t) {
    if (t == 1) {
      return end;
    }
    double s = 1 - t;
    Vec first = start.times(s * s * s).plus(c1.times(3 * s * s * t));
    return first.plus(c2.times(3 * s * t * t)).plus(end.times(t * t * t));
  }

  @Override
  public Vec tangent(double t) {
    double s = 1 - t;
    return c1.minus(start).times(3 * s * s).plus(c2.minus(c1).times(6 * s * t)).plus(end.minus(c2).times(3 * t * t));
  }

  @Override
  public double length() {
    return Quadrature.integrate(t -> tangent(t).length());
  }

  @Override
  public double sweptArea() {
    // The integrand has degree 5, for which three Gauss points are exact.
    return Quadrature.gauss3(t -> at(t).cross(tangent(t))) / 2;
  }

  @Override
  public Box box() {
    Box box = Box.of(start, end);
    for (double t : extremes(start.x(), c1.x(), c2.x(), end.x())) {
      box = box.and(at(t));
    }
    for (double t : extremes(start.y(), c1.y(), c2.y(), end.y())) {
      box = box.and(at(t));
    }
    return box;
  }

  /** Where between 0 and 1 the derivative is 0; neither root loses digits, and a, the t² term, may be 0. */
  private static double[] extremes(double p0, double p1, double p2, double p3) {
    double a = p3 - 3 * p2 + 3 * p1 - p0;
    double b = 2 * (p2 - 2 * p1 + p0);
    double c = p1 - p0;
    double[] found = new double[2];
    int count = 0;
    double root = b * b - 4 * a * c;
    if (root >= 0) {
      double q = -(b + Math.copySign(Math.sqrt(root), b)) / 2;
      for (double t : new double[] {q / a, c / q}) {
        if (t > 0 && t < 1) {
          found[count++] = t;
        }
      }
    }
    return Arrays.copyOf(found, count);
  }

  @Override
  public List<Vec> flatten(double chordError) {
    double bend = Math.max(start.minus(c1.times(2)).plus(c2).length(), c1.minus(c2.times(2)).plus(end).length());
    int pieces = Math.max(1, (int) Math.ceil(Math.sqrt(6 * bend / (8 * chordError))));
    List<Vec> points = new ArrayList<>(pieces);
    for (int i = 1; i < pieces; i++) {
      points.add(at((double) i / pieces));
    }
    points.add(end);
    return points;
  }

  @Override
  public Cubic reversed() {
    return new Cubic(end, c2, c1, start);
  }

  @Override
  public Cubic part(double from, double to) {
    Vec a = at(from);
    Vec b = at(to);
    double third = (to - from) / 3;
    return new Cubic(a, a.plus(tangent(from).times(third)), b.minus(tangent(to).times(third)), b);
  }

  @Override
  public Cubic mirrored() {
    return new Cubic(end.mirrored(), c2.mirrored(), c1.mirrored(), start.mirrored());
  }

  @Override
  public Cubic moved(Motion motion) {
    return new Cubic(motion.of(start), motion.of(c1), motion.of(c2), motion.of(end));
  }
}
