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
 * Where the side being offset is over 15 in nominal, courses are offset by 33 % at most: ANSI A108.02 and the TCNA
 * Handbook, as told by the Ceramic Tile Education Foundation. A third counts as 33 %.
 */
final class LargeOffset implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("offset.large", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      PanelSpec spec = panel.spec();
      JointRules rules = JointRules.of(spec);
      double side = rules.shifted();
      double share = rules.offset();
      if (rules.isOffsetTooFar()) {
        found.accept(report.finding(Grade.ERROR, spec.id(), "",
            Map.of("offset", share, "most", JointRules.LARGE_OFFSET, "side", side), "percent",
            (int) Math.ceil(share * 100 - Report.ROUNDING), "side", report.shown(side)));
      }
    }
  }
}
