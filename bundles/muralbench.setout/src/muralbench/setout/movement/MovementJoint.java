// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

/**
 * A joint that is widened and filled with sealant instead of grout.
 *
 * @param axis the way it runs
 * @param at its middle, mm: x of a vertical one, y of a horizontal one, in the wall plane
 * @param width mm, above 0
 */
public record MovementJoint(MovementAxis axis, double at, double width) {
  /** Where it runs, without its width. */
  public MovementLine line() {
    return new MovementLine(axis, at, false, false);
  }
}
