// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

import java.util.Comparator;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.geometry.Vec;

/**
 * A joint that is widened and filled with sealant instead of grout.
 *
 * @param axis the way it runs
 * @param at its middle, mm: x of a vertical one, y of a horizontal one, in the wall plane
 * @param width mm, above 0
 */
public record MovementJoint(MovementAxis axis, double at, double width) {
  /** Vertical ones from the left, then horizontal ones from below. */
  public static final Comparator<MovementJoint> ORDER =
      Comparator.comparing(MovementJoint::axis).thenComparingDouble(MovementJoint::at);

  /** This joint in another place. */
  public MovementJoint moved(Transfer to) {
    Vec there = to.of(new Vec(at, at));
    return new MovementJoint(axis, axis == MovementAxis.VERTICAL ? there.x() : there.y(), width);
  }

  /** Where it runs, without its width. */
  public MovementLine line() {
    return new MovementLine(axis, at, false, false);
  }
}
