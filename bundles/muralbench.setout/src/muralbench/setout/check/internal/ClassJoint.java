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

/** Practice gives rectified tile joints of at least 1/8 in and calibrated tile 3/16 in: a trade letter. */
final class ClassJoint implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("joint.class", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      PanelSpec spec = panel.spec();
      JointRules rules = JointRules.of(spec);
      double least = rules.classLeast();
      boolean broken = spec.joint() < rules.least() - Report.ROUNDING;
      if (rules.classKnown() && !broken && spec.joint() < least - Report.ROUNDING) {
        found.accept(report.finding(Grade.ADVICE, spec.id(), "", Map.of("joint", spec.joint(), "least", least), "joint",
            report.below(spec.joint()), "least", report.limit(least), "class", spec.tile().tileClass(), "tile",
            spec.tile().id()));
      }
    }
  }
}
