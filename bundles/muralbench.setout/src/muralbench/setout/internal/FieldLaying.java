// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.Pattern;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementSpec;

/**
 * Lays the grid that several panels share: over all of them as one field, as if what lies between them were a window.
 * So the outer ends are balanced against each other, all cuts are as good as they can be together, and a movement
 * joint of one panel runs on through the others.
 */
final class FieldLaying {
  /**
   * A grid that is laid.
   *
   * @param pattern the pattern with its movement joints
   * @param origin where it starts, in the wall plane
   * @param joints the movement joints, each as long as the field
   */
  record Field(Pattern pattern, Vec origin, List<MovementJoint> joints) {
    /** The joints that run through a part of the field. */
    List<MovementJoint> within(Box part) {
      return joints.stream().filter(joint -> joint.axis() == MovementAxis.VERTICAL
          ? joint.at() > part.minX() && joint.at() < part.maxX()
          : joint.at() > part.minY() && joint.at() < part.maxY()).toList();
    }
  }

  private final Messages texts = Messages.of(FieldLaying.class);
  private final PanelSpec panel;
  private final OriginSpec.Shared shared;
  private final Layings layings;

  /** The field of a panel; which of its panels it is makes no difference. */
  FieldLaying(PanelSpec panel, OriginSpec.Shared shared, Layings layings) {
    this.panel = panel;
    this.shared = shared;
    this.layings = layings;
  }

  Field field() throws InputException {
    List<Regions> parts = new ArrayList<>();
    for (PanelSpec part : shared.panels()) {
      try {
        parts.add(Regions.searched(part, layings.units()));
      } catch (InputException e) {
        // That panel is refused itself, and the others are laid without it.
        continue;
      }
    }
    PanelSpec whole = panel.withOrigin(shared.start()).withMovement(movement());
    return new PanelEngine(whole, layings.units()).field(Regions.together(whole, parts), layings);
  }

  /** What any of the panels asks for holds for all. */
  private MovementSpec movement() throws InputException {
    Set<MovementJoint> given = new LinkedHashSet<>();
    MovementSpec.ByRule rule = null;
    List<Box> keepOut = new ArrayList<>();
    for (PanelSpec part : shared.panels()) {
      if (part.movement() instanceof MovementSpec.Given joints) {
        given.addAll(joints.joints());
      } else if (part.movement() instanceof MovementSpec.ByRule byRule) {
        keepOut.addAll(byRule.keepOut());
        rule = byRule;
      }
    }
    if (rule != null && !given.isEmpty()) {
      String all = shared.panels().stream().map(PanelSpec::id).collect(Collectors.joining(", "));
      throw new InputException(panel.id(), texts.text("field.movement", "panels", all),
          texts.text("field.movement.remedy"));
    }
    return rule != null ? new MovementSpec.ByRule(rule.rule(), rule.swing(), keepOut)
        : given.isEmpty() ? new MovementSpec.None() : new MovementSpec.Given(List.copyOf(given));
  }
}
