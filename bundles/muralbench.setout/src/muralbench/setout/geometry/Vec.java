// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

/**
 * A point or a direction in the wall plane.
 *
 * @param x millimetres to the right
 * @param y millimetres up
 */
public record Vec(double x, double y) {
  /** The point (0, 0). */
  public static final Vec ZERO = new Vec(0, 0);

  /** This plus {@code other}. */
  public Vec plus(Vec other) {
    return new Vec(x + other.x, y + other.y);
  }

  /** This minus {@code other}. */
  public Vec minus(Vec other) {
    return new Vec(x - other.x, y - other.y);
  }

  /** This times a number. */
  public Vec times(double factor) {
    return new Vec(x * factor, y * factor);
  }

  /** The mirror image about x = 0. */
  public Vec mirrored() {
    return new Vec(0 - x, y);
  }

  /** The cross product's third component, positive if {@code other} lies counter-clockwise of this. */
  public double cross(Vec other) {
    return x * other.y - y * other.x;
  }

  /** The scalar product. */
  public double dot(Vec other) {
    return x * other.x + y * other.y;
  }

  /** The distance from (0, 0), mm. */
  public double length() {
    return Math.hypot(x, y);
  }

  /** The distance to {@code other}, mm. */
  public double distance(Vec other) {
    return Math.hypot(other.x - x, other.y - y);
  }

  /** The point between this and {@code other}, at {@code t} from 0 (this) to 1. */
  public Vec towards(Vec other, double t) {
    return new Vec(x + (other.x - x) * t, y + (other.y - y) * t);
  }
}
