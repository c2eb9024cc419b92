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

/** A joint over 1/2 in is more than wall grouts are made for, and often a slip of the unit. */
final class WideJoint implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("joint.wide", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      PanelSpec spec = panel.spec();
      if (spec.joint() > JointRules.of(spec).most() + Report.ROUNDING) {
        found.accept(report.finding(Grade.WARNING, spec.id(), "", Map.of("joint", spec.joint(), "most", JointRules.MOST), "joint",
            report.limit(spec.joint()), "most", report.shown(JointRules.MOST)));
      }
    }
  }
}
