// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

/**
 * How something is carried over to another place on the wall, upright: shifted, or mirrored left to right and then
 * shifted.
 *
 * @param mirrored whether it is first mirrored about x = 0
 * @param shift what is added then, mm
 */
public record Transfer(boolean mirrored, Vec shift) {
  /**
   * What lays a box with its lower left corner on a point.
   *
   * @param box the box as it is before
   * @param corner where its lower left corner is to be
   */
  public static Transfer of(Box box, Vec corner, boolean mirrored) {
    return new Transfer(mirrored,
        new Vec(corner.x() + (mirrored ? box.maxX() : 0 - box.minX()), corner.y() - box.minY()));
  }

  /** Where a point goes. */
  public Vec of(Vec point) {
    return (mirrored ? point.mirrored() : point).plus(shift);
  }

  /** Where a contour goes; it runs the same way round as before. */
  public Contour of(Contour contour) {
    return (mirrored ? contour.mirrored() : contour).moved(Motion.shift(shift));
  }

  /**
   * The movement that lays something on its place after this transfer, if {@code before} laid it there before and it is
   * itself mirrored about x = 0 now.
   */
  public Motion of(Motion before) {
    return mirrored ? new Motion(-before.turn(), before.cos(), 0 - before.sin(), of(before.shift()))
        : before.then(Motion.shift(shift));
  }
}
