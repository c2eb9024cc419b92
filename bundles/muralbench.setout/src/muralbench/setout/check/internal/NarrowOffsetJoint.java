// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;

/**
 * Where courses are offset and a side of the tile is over 15 in, the joint is at least 1/8 in for rectified tile, 3/16
 * in for calibrated tile, and the edge warpage comes on top: ANSI A108.02 §4.3.8.1, as quoted in the trade press.
 * Whether the tile is rectified and how much it is warped is not known here, so the least of these is asked for.
 */
final class NarrowOffsetJoint implements Rule {
  /** 1/8 in. */
  private static final double LEAST = 3.175;

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("joint.offset.narrow", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      PanelSpec spec = panel.spec();
      double side = Math.max(spec.tile().width(), spec.tile().height());
      if (Offset.share(spec) > 0 && Offset.isLarge(side) && spec.joint() < LEAST - Report.ROUNDING) {
        found.accept(report.finding(Grade.ERROR, spec.id(), "",
            Map.of("joint", spec.joint(), "least", LEAST, "side", side), "joint", report.below(spec.joint()),
            "least", report.limit(LEAST), "side", report.shown(side)));
      }
    }
  }
}
