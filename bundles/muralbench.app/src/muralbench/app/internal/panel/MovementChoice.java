// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.List;
import muralbench.model.JointAxis;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementSpec;

/**
 * Which movement joints a person wants.
 *
 * @param kind how they are placed
 * @param joints those placed by hand; kept while the rule is followed, so that they are there again later
 */
public record MovementChoice(Kind kind, List<MovementJoint> joints) {
  /** How movement joints are placed. */
  public enum Kind {
    /** There are none. */
    NONE,
    /** By the rule for the exposure. */
    RULE,
    /** By hand. */
    HAND
  }

  public MovementChoice {
    joints = List.copyOf(joints);
  }

  /** What a panel has. */
  static MovementChoice of(Panel panel) {
    List<MovementJoint> joints = panel.getMovementJoints().stream().map(joint -> new MovementJoint(
        joint.getAxis() == JointAxis.VERTICAL ? MovementAxis.VERTICAL : MovementAxis.HORIZONTAL, joint.getAt(),
        joint.getWidth())).toList();
    Kind kind = panel.isMovementByRule() ? Kind.RULE : joints.isEmpty() ? Kind.NONE : Kind.HAND;
    return new MovementChoice(kind, joints);
  }

  /** What the set-out is asked for. */
  MovementSpec spec(MovementSpec.ByRule rule) {
    return switch (kind) {
      case NONE -> new MovementSpec.None();
      case RULE -> rule;
      case HAND -> new MovementSpec.Given(joints);
    };
  }

  /** Puts it into the model. */
  void applyTo(Panel panel) {
    panel.setMovementByRule(kind == Kind.RULE);
    panel.getMovementJoints().clear();
    if (kind != Kind.NONE) {
      joints.forEach(joint -> panel.getMovementJoints().add(model(joint)));
    }
  }

  private static muralbench.model.MovementJoint model(MovementJoint joint) {
    muralbench.model.MovementJoint made = MuralFactory.eINSTANCE.createMovementJoint();
    made.setAxis(joint.axis() == MovementAxis.VERTICAL ? JointAxis.VERTICAL : JointAxis.HORIZONTAL);
    made.setAt(joint.at());
    made.setWidth(joint.width());
    return made;
  }
}
