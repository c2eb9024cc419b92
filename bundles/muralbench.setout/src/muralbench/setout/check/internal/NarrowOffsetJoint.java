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
 * Where courses are offset and a side of the tile is over 15 in, the joint is at least as wide as {@link JointRules} say.
 * What is not known of the tile is not held against the joint, but asked for.
 */
final class NarrowOffsetJoint implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("joint.offset.narrow", mural.spec().units());
    Report unknown = new Report("joint.offset.unknown", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      JointRules rules = JointRules.of(panel.spec());
      if (rules.isLargeAndOffset()) {
        if (panel.spec().joint() < rules.leastForOffset() - Report.ROUNDING) {
          found.accept(narrow(panel.spec(), rules, report));
        } else if (!rules.classKnown() || !rules.warpageKnown()) {
          found.accept(unknown(panel.spec(), rules, unknown));
        }
      }
    }
  }

  private static Finding narrow(PanelSpec panel, JointRules rules, Report report) {
    double side = Math.max(panel.tile().width(), panel.tile().height());
    double least = rules.leastForOffset();
    String variant = rules.classKnown() ? rules.warpageKnown() ? ".warped" : ".class" : "";
    return report.finding(Grade.ERROR, panel.id(), variant,
        Map.of("joint", panel.joint(), "least", least, "side", side), "joint", report.below(panel.joint()), "least",
        report.limit(least), "side", report.shown(side), "class", panel.tile().tileClass(), "warpage",
        report.limit(Math.max(0, panel.tile().warpage())));
  }

  private static Finding unknown(PanelSpec panel, JointRules rules, Report report) {
    double side = Math.max(panel.tile().width(), panel.tile().height());
    String variant = rules.classKnown() ? ".warpage" : rules.warpageKnown() ? ".class" : "";
    return report.finding(Grade.ADVICE, panel.id(), variant, Map.of("joint", panel.joint(), "side", side), "tile",
        panel.tile().id(), "joint", report.below(panel.joint()), "side", report.shown(side), "class",
        panel.tile().tileClass(), "least", report.limit(rules.leastForOffset()));
  }
}
