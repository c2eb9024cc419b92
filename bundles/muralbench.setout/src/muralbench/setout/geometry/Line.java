// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.List;

/** A straight line. */
public record Line(Vec start, Vec end) implements Segment {
  @Override
  public Vec at(double t) {
    return t == 1 ? end : start.towards(end, t);
  }

  @Override
  public Vec tangent(double t) {
    return end.minus(start);
  }

  @Override
  public double length() {
    return start.distance(end);
  }

  @Override
  public double sweptArea() {
    return start.cross(end) / 2;
  }

  @Override
  public Box box() {
    return Box.of(start, end);
  }

  @Override
  public List<Vec> flatten(double chordError) {
    return List.of(end);
  }

  @Override
  public Line reversed() {
    return new Line(end, start);
  }

  @Override
  public Line part(double from, double to) {
    return new Line(at(from), at(to));
  }

  @Override
  public Line mirrored() {
    return new Line(end.mirrored(), start.mirrored());
  }

  @Override
  public Line moved(Motion motion) {
    return new Line(motion.of(start), motion.of(end));
  }
}
