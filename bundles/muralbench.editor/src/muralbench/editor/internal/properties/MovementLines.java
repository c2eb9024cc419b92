// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.OpenMural;
import muralbench.model.JointAxis;
import muralbench.model.MovementJoint;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.setout.MuralReader;
import muralbench.setout.PanelSetOut;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementSpec;

/** The lines about the movement joints of a panel. */
final class MovementLines {
  private static final String GROUP = "movement";
  private static final Messages TEXTS = ModelProperties.TEXTS;

  /** How movement joints are placed, as a choice. */
  enum Placing {
    /** There are none. */
    NONE,
    /** By the rule for the exposure. */
    RULE,
    /** By hand. */
    HAND
  }

  private final OpenMural mural;
  private final Panel panel;
  private final LengthUnit unit;

  MovementLines(OpenMural mural, Panel panel) {
    this.mural = mural;
    this.panel = panel;
    this.unit = mural.units();
  }

  List<Property> lines() {
    List<Property> lines = new ArrayList<>();
    lines.add(Entries.choice("movement", GROUP, Placing.class, this::placing, this::become));
    MovementSpec.ByRule rule = wanted();
    if (rule != null) {
      double apart = rule.rule().greatestSpacing();
      double width = rule.rule().width(apart, rule.swing(), panel.getJoint());
      lines.add(Property.info("movement.apart", GROUP, () -> LengthText.shownInFeet(apart, unit)));
      lines.add(Property.info("movement.wide", GROUP, () -> LengthText.fine(width, unit)));
      lines.add(Property.info("movement.source", GROUP, () -> TEXTS.text("movement.source")));
    }
    List<muralbench.setout.movement.MovementJoint> laid = mural.setOut(panel).map(PanelSetOut::movement)
        .orElse(List.of());
    for (int i = 0; i < laid.size(); i++) {
      String words = words(laid.get(i));
      lines.add(Property.info(LineNames.JOINT + (i + 1), GROUP, () -> words));
    }
    return lines;
  }

  private Placing placing() {
    return panel.isMovementByRule() ? Placing.RULE : panel.getMovementJoints().isEmpty() ? Placing.NONE : Placing.HAND;
  }

  /** Joints by hand begin where the joints are now, or with one in the middle, so that there is something to change. */
  private void become(Placing placing) {
    List<muralbench.setout.movement.MovementJoint> now = mural.setOut(panel).map(PanelSetOut::movement)
        .orElse(List.of());
    panel.setMovementByRule(placing == Placing.RULE);
    if (placing == Placing.NONE) {
      panel.getMovementJoints().clear();
    } else if (placing == Placing.HAND && panel.getMovementJoints().isEmpty()) {
      now.forEach(joint -> panel.getMovementJoints().add(model(joint)));
      if (now.isEmpty()) {
        middle();
      }
    }
  }

  private MovementJoint model(muralbench.setout.movement.MovementJoint joint) {
    return joint(joint.axis() == MovementAxis.VERTICAL ? JointAxis.VERTICAL : JointAxis.HORIZONTAL,
        LengthText.rounded(joint.at(), unit), joint.width());
  }

  private void middle() {
    mural.setOut(panel).ifPresent(setOut -> {
      MovementSpec.ByRule rule = wanted();
      double width = rule == null ? setOut.spec().joint()
          : rule.rule().width(rule.rule().greatestSpacing(), rule.swing(), setOut.spec().joint());
      double at = LengthText.rounded(setOut.spec().outline().box().centre().x(), unit);
      panel.getMovementJoints().add(joint(JointAxis.VERTICAL, at, width));
    });
  }

  private static MovementJoint joint(JointAxis axis, double at, double width) {
    MovementJoint joint = MuralFactory.eINSTANCE.createMovementJoint();
    joint.setAxis(axis);
    joint.setAt(at);
    joint.setWidth(width);
    return joint;
  }

  private MovementSpec.ByRule wanted() {
    try {
      return MuralReader.movementRule(panel);
    } catch (InputException e) {
      // The findings say what is wrong with the mural.
      return null;
    }
  }

  private String words(muralbench.setout.movement.MovementJoint joint) {
    return TEXTS.text("movement.joint." + joint.axis().word(), "at", LengthText.shownInFeet(joint.at(), unit), "width",
        LengthText.fine(joint.width(), unit));
  }
}
