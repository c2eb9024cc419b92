// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.joint.JointRules;

/**
 * The joint is at least three times the spread of facial size in the delivered tile and never under 1/16 in: ANSI
 * A108.02 §4.3.8, as quoted in the trade press.
 */
final class NarrowJoint implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("joint.narrow", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      PanelSpec spec = panel.spec();
      double spread = spec.tile().facialVariation();
      double least = JointRules.of(spec).leastForSpread();
      if (spec.joint() < least - Report.ROUNDING) {
        found.accept(report.finding(Grade.ERROR, spec.id(), least > JointRules.FLOOR ? "" : ".floor",
            Map.of("joint", spec.joint(), "least", least, "spread", spread), "joint", report.below(spec.joint()),
            "least", report.limit(least), "spread", report.limit(spread)));
      }
    }
  }
}
