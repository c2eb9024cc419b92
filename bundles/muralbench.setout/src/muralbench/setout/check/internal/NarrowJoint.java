// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.TileSpec;

/**
 * The joint is at least three times the spread of facial size in the delivered tile and never under 1/16 in: ANSI
 * A108.02 §4.3.8, as quoted in the trade press.
 */
public final class NarrowJoint implements Rule {
  /** 1/16 in. */
  private static final double LEAST = 1.5875;
  private static final double SPREADS = 3;

  /** The narrowest joint a tile allows, mm. */
  public static double least(TileSpec tile) {
    return Math.max(LEAST, SPREADS * tile.facialVariation());
  }

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("joint.narrow", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      PanelSpec spec = panel.spec();
      double spread = spec.tile().facialVariation();
      double least = least(spec.tile());
      if (spec.joint() < least - Report.ROUNDING) {
        found.accept(report.finding(Grade.ERROR, spec.id(), SPREADS * spread > LEAST ? "" : ".floor",
            Map.of("joint", spec.joint(), "least", least, "spread", spread), "joint", report.below(spec.joint()),
            "least", report.limit(least), "spread", report.limit(spread)));
      }
    }
  }
}
