// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementSpec;

/** Takes the start of a pattern and its opened joints from a set-out, so that the panel can be set out the same again. */
final class FixedStart {
  private final PanelSetOut laid;
  private final Motion placed;

  private FixedStart(PanelSetOut laid) {
    this.laid = laid;
    placed = Motion.turn(laid.spec().bond().rotation(), Vec.ZERO).then(Motion.shift(laid.origin()));
  }

  /** The panel of a set-out with the start that was found and the joints that were opened as given ones. */
  static PanelSpec of(PanelSetOut laid) {
    PanelSpec panel = laid.spec().withOrigin(new OriginSpec.At(laid.origin()));
    if (panel.movement() instanceof MovementSpec.None) {
      return panel;
    }
    FixedStart start = new FixedStart(laid);
    List<MovementJoint> joints = new ArrayList<>();
    for (MovementAxis axis : MovementAxis.values()) {
      joints.addAll(start.closed(axis, true));
      joints.addAll(start.closed(axis, false));
    }
    return panel.withMovement(new MovementSpec.Given(joints));
  }

  /** The joints of an axis on one side of the start, each at its place before any was opened. */
  private List<MovementJoint> closed(MovementAxis axis, boolean beyond) {
    int side = beyond ? 1 : -1;
    List<MovementJoint> joints = laid.movement().stream()
        .filter(joint -> joint.axis() == axis && side * along(joint) > 0)
        .sorted(Comparator.comparingDouble(joint -> side * along(joint))).toList();
    List<MovementJoint> closed = new ArrayList<>();
    double opened = 0;
    for (MovementJoint joint : joints) {
      double extra = joint.width() - laid.spec().joint();
      double back = side * (opened + extra / 2);
      opened += extra;
      closed.add(new MovementJoint(axis, joint.at() - back * direction(axis), joint.width()));
    }
    return closed;
  }

  /** How far a joint is from the start of the pattern, in the direction the pattern grows. */
  private double along(MovementJoint joint) {
    Vec origin = laid.origin();
    double from = joint.axis() == MovementAxis.VERTICAL ? origin.x() : origin.y();
    return (joint.at() - from) * direction(joint.axis());
  }

  /** 1 if the axis of the pattern that crosses joints of an axis grows as the wall's does, else -1. */
  private double direction(MovementAxis axis) {
    boolean level = Math.abs(placed.cos()) > Math.abs(placed.sin());
    double grows = axis == MovementAxis.VERTICAL ? level ? placed.cos() : -placed.sin()
        : level ? placed.cos() : placed.sin();
    return Math.signum(grows);
  }
}
