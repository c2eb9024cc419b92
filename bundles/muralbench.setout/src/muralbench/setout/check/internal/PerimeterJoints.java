// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;

/**
 * Reminds of the joint where tile meets what holds it: ANSI A108.02 §4.4.1 as quoted in the trade press. One finding
 * for all fixed panels whose tile goes right up to the outline; where an edge gap is left, the joint is there.
 */
final class PerimeterJoints implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    List<String> panels = mural.panels().stream().map(panel -> panel.spec())
        .filter(panel -> panel.mounting().equals("fixed") && panel.edgeGap() == 0).map(panel -> panel.id()).toList();
    if (!panels.isEmpty()) {
      found.accept(new Report("movement.perimeter", mural.spec().units()).finding(Grade.ADVICE, "", "",
          Map.of("panels", panels), "panels", String.join(", ", panels)));
    }
  }
}
