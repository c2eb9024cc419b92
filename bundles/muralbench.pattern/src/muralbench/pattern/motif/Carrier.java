// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Cubic;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/** The whole line, ellipse or curve that stretches of a drawing lie on, with a running number along it. */
interface Carrier {
  /** A stretch of a carrier, {@code from} below {@code to}; forward if walked that way. */
  record Span(double from, double to, boolean forward) {}

  /** Where a segment lies on this carrier, or null if it does not. */
  Span locate(Segment segment, double tolerance);

  /** A stretch as a segment. */
  Segment part(double from, double to);

  /** After how much the running number is at the same place again; 0 if never. */
  double period();

  /** How much of the running number is about as long as a small length. */
  double step(double length);

  static Carrier of(Segment segment) {
    if (segment instanceof Line line) {
      return new Straight(line.start(), line.end().minus(line.start()).times(1 / line.length()));
    }
    return segment instanceof Arc arc ? Round.of(arc) : new Curved((Cubic) segment);
  }

  /** A straight line; the number is the distance from a point. */
  record Straight(Vec origin, Vec direction) implements Carrier {
    @Override
    public Span locate(Segment segment, double tolerance) {
      if (!segment.straight()) {
        return null;
      }
      Vec start = segment.start().minus(origin);
      Vec end = segment.end().minus(origin);
      if (Math.abs(direction.cross(start)) > tolerance || Math.abs(direction.cross(end)) > tolerance) {
        return null;
      }
      double from = direction.dot(start);
      double to = direction.dot(end);
      return new Span(Math.min(from, to), Math.max(from, to), from < to);
    }

    @Override
    public Segment part(double from, double to) {
      return new Line(origin.plus(direction.times(from)), origin.plus(direction.times(to)));
    }

    @Override
    public double period() {
      return 0;
    }

    @Override
    public double step(double length) {
      return length;
    }
  }

  /** An ellipse, the longer half axis first; the number is the angle in the sense of {@link Arc}. */
  record Round(Vec centre, double rx, double ry, double tilt) implements Carrier {
    static Round of(Arc arc) {
      return arc.rx() >= arc.ry() ? new Round(arc.centre(), arc.rx(), arc.ry(), arc.circular() ? 0 : arc.tilt())
          : new Round(arc.centre(), arc.ry(), arc.rx(), arc.tilt() + Math.PI / 2);
    }

    @Override
    public Span locate(Segment segment, double tolerance) {
      if (!(segment instanceof Arc arc) || !on(arc.start(), tolerance) || !on(arc.end(), tolerance)
          || !on(arc.at(0.5), tolerance) || !on(arc.at(0.25), tolerance)) {
        return null;
      }
      boolean forward = arc.sweep() > 0;
      double from = angle(forward ? arc.start() : arc.end());
      double to = Math.abs(arc.sweep()) >= 2 * Math.PI - 1e-12 ? from + 2 * Math.PI
          : angle(forward ? arc.end() : arc.start());
      return new Span(from, to <= from ? to + 2 * Math.PI : to, forward);
    }

    private boolean on(Vec point, double tolerance) {
      return Math.abs(inUnits(point).length() - 1) * ry <= tolerance;
    }

    private Vec inUnits(Vec point) {
      Vec off = point.minus(centre);
      double cos = Math.cos(tilt);
      double sin = Math.sin(tilt);
      return new Vec((cos * off.x() + sin * off.y()) / rx, (-sin * off.x() + cos * off.y()) / ry);
    }

    private double angle(Vec point) {
      Vec unit = inUnits(point);
      double angle = Math.atan2(unit.y(), unit.x());
      return angle < 0 ? angle + 2 * Math.PI : angle;
    }

    @Override
    public Segment part(double from, double to) {
      return new Arc(centre, rx, ry, tilt, from, to - from);
    }

    @Override
    public double period() {
      return 2 * Math.PI;
    }

    @Override
    public double step(double length) {
      return length / ry;
    }
  }

  /** A Bezier curve, thought on beyond its ends; the number is its parameter. */
  record Curved(Cubic curve) implements Carrier {
    private static final double FIRST = -1.5;
    private static final double LAST = 2.5;
    private static final int SAMPLES = 160;

    @Override
    public Span locate(Segment segment, double tolerance) {
      if (!(segment instanceof Cubic cubic)) {
        return null;
      }
      double from = nearest(cubic.start(), tolerance);
      double to = nearest(cubic.end(), tolerance);
      if (Double.isNaN(from) || Double.isNaN(to) || from == to) {
        return null;
      }
      Cubic same = curve.part(from, to);
      boolean equal = same.c1().distance(cubic.c1()) <= 8 * tolerance
          && same.c2().distance(cubic.c2()) <= 8 * tolerance;
      return equal ? new Span(Math.min(from, to), Math.max(from, to), from < to) : null;
    }

    private double nearest(Vec point, double tolerance) {
      if (point.distance(curve.start()) <= tolerance) {
        return 0;
      }
      if (point.distance(curve.end()) <= tolerance) {
        return 1;
      }
      double best = 0;
      for (int i = 0; i <= SAMPLES; i++) {
        double t = FIRST + (LAST - FIRST) * i / SAMPLES;
        best = along(t).distance(point) < along(best).distance(point) ? t : best;
      }
      for (int i = 0; i < 20; i++) {
        Vec speed = curve.tangent(best);
        double square = speed.dot(speed);
        best += square > 0 ? point.minus(along(best)).dot(speed) / square : 0;
      }
      return along(best).distance(point) <= tolerance ? best : Double.NaN;
    }

    private Vec along(double t) {
      return curve.at(t);
    }

    @Override
    public Segment part(double from, double to) {
      return from == 0 && to == 1 ? curve : curve.part(from, to);
    }

    @Override
    public double period() {
      return 0;
    }

    @Override
    public double step(double length) {
      return length / curve.length();
    }
  }
}
