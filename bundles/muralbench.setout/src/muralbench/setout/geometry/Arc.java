// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * An arc of an ellipse. A point at the angle a lies at the centre plus the vector (rx cos a, ry sin a), turned by
 * {@code tilt}. For a circle rx = ry, and a is the ordinary angle less the tilt.
 *
 * @param centre middle of the ellipse
 * @param rx half axis along the tilt, mm, above 0
 * @param ry other half axis, mm, above 0
 * @param tilt direction of the first axis, radians counter-clockwise from x
 * @param from angle a at the start, radians
 * @param sweep how far a runs, radians; positive counter-clockwise, at most a full turn either way
 */
public record Arc(Vec centre, double rx, double ry, double tilt, double from, double sweep) implements Segment {
  private static final double FULL = 1e-9;

  /** An arc of a circle from the angle {@code from} over {@code sweep}, radians. */
  public static Arc circular(Vec centre, double radius, double from, double sweep) {
    return new Arc(centre, radius, radius, 0, from, sweep);
  }

  /** Whether the ellipse is a circle. */
  public boolean circular() {
    return rx == ry;
  }

  /** The point at the angle {@code a}, radians; see the class comment. */
  public Vec atAngle(double a) {
    double u = rx * Math.cos(a);
    double v = ry * Math.sin(a);
    double cos = Math.cos(tilt);
    double sin = Math.sin(tilt);
    return new Vec(centre.x() + cos * u - sin * v, centre.y() + sin * u + cos * v);
  }

  @Override
  public Vec start() {
    return atAngle(from);
  }

  @Override
  public Vec end() {
    return Math.abs(sweep) == 2 * Math.PI ? atAngle(from) : atAngle(from + sweep);
  }

  @Override
  public Vec at(double t) {
    return t == 1 ? end() : atAngle(from + sweep * t);
  }

  @Override
  public Vec tangent(double t) {
    double a = from + sweep * t;
    double u = -rx * Math.sin(a) * sweep;
    double v = ry * Math.cos(a) * sweep;
    double cos = Math.cos(tilt);
    double sin = Math.sin(tilt);
    return new Vec(cos * u - sin * v, sin * u + cos * v);
  }

  @Override
  public double length() {
    if (circular()) {
      return rx * Math.abs(sweep);
    }
    return Quadrature.integrate(t -> {
      double a = from + sweep * t;
      return Math.abs(sweep) * Math.hypot(rx * Math.sin(a), ry * Math.cos(a));
    });
  }

  @Override
  public double sweptArea() {
    Vec a = start();
    Vec b = end();
    return (centre.x() * (b.y() - a.y()) - centre.y() * (b.x() - a.x()) + rx * ry * sweep) / 2;
  }

  @Override
  public Box box() {
    Box box = Box.of(start(), end());
    double cos = Math.cos(tilt);
    double sin = Math.sin(tilt);
    double extremeX = Math.atan2(-ry * sin, rx * cos);
    double extremeY = Math.atan2(ry * cos, rx * sin);
    for (double extreme : new double[] {extremeX, extremeX + Math.PI, extremeY, extremeY + Math.PI}) {
      if (covers(extreme)) {
        box = box.and(atAngle(extreme));
      }
    }
    return box;
  }

  /** Whether the arc passes the angle {@code a} (any multiple of full turns added). */
  public boolean covers(double a) {
    double ahead = (sweep >= 0 ? a - from : from - a) % (2 * Math.PI);
    return (ahead < 0 ? ahead + 2 * Math.PI : ahead) <= Math.abs(sweep);
  }

  @Override
  public List<Vec> flatten(double chordError) {
    double radius = Math.max(rx, ry);
    // At most a quarter turn each, or a coarse chord error would flatten a circle to nothing.
    double step = Math.min(Math.PI / 2, 2 * Math.acos(Math.max(0, 1 - chordError / radius)));
    int pieces = Math.max(1, (int) Math.ceil(Math.abs(sweep) / step));
    if (Math.abs(sweep) > 2 * Math.PI - FULL) {
      // A whole circle gets corners in its four outermost points, or it would not touch what it touches there.
      pieces = (pieces + 3) / 4 * 4;
    }
    List<Vec> points = new ArrayList<>(pieces);
    for (int i = 1; i < pieces; i++) {
      points.add(at((double) i / pieces));
    }
    points.add(end());
    return points;
  }

  @Override
  public Arc reversed() {
    return new Arc(centre, rx, ry, tilt, from + sweep, -sweep);
  }

  @Override
  public Arc part(double start, double end) {
    return new Arc(centre, rx, ry, tilt, from + sweep * start, sweep * (end - start));
  }

  @Override
  public Arc mirrored() {
    return new Arc(centre.mirrored(), rx, ry, -tilt, Math.PI - from - sweep, sweep);
  }

  @Override
  public Arc moved(Motion motion) {
    return new Arc(motion.of(centre), rx, ry, tilt + motion.turn(), from, sweep);
  }
}
