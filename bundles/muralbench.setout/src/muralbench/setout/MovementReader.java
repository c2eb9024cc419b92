// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.model.Exposure;
import muralbench.model.FocalArea;
import muralbench.model.JointAxis;
import muralbench.model.Mural;
import muralbench.model.Panel;
import muralbench.setout.geometry.Box;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementRule;
import muralbench.setout.movement.MovementSpec;
import org.eclipse.emf.ecore.EObject;

/**
 * Takes the movement joints of panels from the model.
 *
 * @param ranges refuses values that cannot be
 */
record MovementReader(Ranges ranges) {
  MovementSpec movement(Panel panel) throws InputException {
    if (panel.isMovementByRule()) {
      return byRule(panel);
    }
    List<MovementJoint> joints = new ArrayList<>();
    for (muralbench.model.MovementJoint joint : panel.getMovementJoints()) {
      MovementAxis axis = joint.getAxis() == JointAxis.VERTICAL ? MovementAxis.VERTICAL : MovementAxis.HORIZONTAL;
      joints.add(new MovementJoint(axis, ranges.position("movement.at", joint.getAt()),
          ranges.positive("movement.width", joint.getWidth())));
    }
    return joints.isEmpty() ? new MovementSpec.None() : new MovementSpec.Given(joints);
  }

  /** The swing of temperature in °F; the one that asks for nothing more where it is not known. */
  private double swing(Panel panel) throws InputException {
    double celsius = panel.eContainer() instanceof Mural mural ? new MakingReader(ranges).swing(mural) : 0;
    return celsius == 0 ? MovementRule.PLAIN_SWING : celsius * 9 / 5;
  }

  /** The rule for a panel, whether it follows it or not. */
  MovementSpec.ByRule byRule(Panel panel) throws InputException {
    MovementRule rule = MovementRule.of(exposure(panel).getLiteral(), panel.getSurface().getLiteral());
    List<Box> keepOut = new ArrayList<>();
    for (FocalArea area : panel.getFocalAreas()) {
      double x = ranges.position("focal.at", area.getX());
      double y = ranges.position("focal.at", area.getY());
      keepOut.add(new Box(x, y, x + ranges.positive("focal.width", area.getWidth()),
          y + ranges.positive("focal.height", area.getHeight())));
    }
    return new MovementSpec.ByRule(rule, swing(panel), keepOut);
  }

  /** What the mural has to stand; a panel that stands alone is indoors and dry. */
  private static Exposure exposure(Panel panel) {
    EObject owner = panel.eContainer();
    return owner instanceof Mural mural && mural.getSite() != null ? mural.getSite().getExposure()
        : Exposure.INTERIOR_DRY;
  }
}
