// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

/**
 * A movement of the plane that keeps every shape: a turn about (0, 0) followed by a shift. Never a mirror image, since
 * a glazed face cannot be turned over.
 *
 * @param turn angle of the turn, radians counter-clockwise
 * @param cos cosine of the turn
 * @param sin sine of the turn
 * @param shift what is added after the turn, mm
 */
public record Motion(double turn, double cos, double sin, Vec shift) {
  /** The movement that leaves everything in place. */
  public static final Motion NONE = new Motion(0, 1, 0, Vec.ZERO);

  /** A shift by {@code by}. */
  public static Motion shift(Vec by) {
    return new Motion(0, 1, 0, by);
  }

  /**
   * A turn about a point.
   *
   * @param degrees counter-clockwise; quarter turns are exact
   * @param centre the point that stays
   */
  public static Motion turn(double degrees, Vec centre) {
    double reduced = degrees % 360;
    double cos;
    double sin;
    if (reduced % 90 == 0) {
      int quarter = Math.floorMod((int) (reduced / 90), 4);
      cos = quarter == 0 ? 1 : quarter == 2 ? -1 : 0;
      sin = quarter == 1 ? 1 : quarter == 3 ? -1 : 0;
    } else {
      cos = Math.cos(Math.toRadians(reduced));
      sin = Math.sin(Math.toRadians(reduced));
    }
    Vec moved = new Vec(cos * centre.x() - sin * centre.y(), sin * centre.x() + cos * centre.y());
    return new Motion(Math.toRadians(reduced), cos, sin, centre.minus(moved));
  }

  /** Where {@code point} goes. */
  public Vec of(Vec point) {
    return new Vec(cos * point.x() - sin * point.y() + shift.x(), sin * point.x() + cos * point.y() + shift.y());
  }

  /** This movement followed by {@code next}. */
  public Motion then(Motion next) {
    return new Motion(turn + next.turn, next.cos * cos - next.sin * sin, next.sin * cos + next.cos * sin,
        next.of(shift));
  }

  /** The movement that brings everything back. */
  public Motion inverse() {
    Vec back = new Vec(-(cos * shift.x() + sin * shift.y()), -(-sin * shift.x() + cos * shift.y()));
    return new Motion(-turn, cos, -sin, back);
  }
}
