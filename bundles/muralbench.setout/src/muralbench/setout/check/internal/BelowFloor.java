// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;

/** Heights on a wall count from the finished floor, so nothing lies below 0. */
final class BelowFloor implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("panel.below", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      double lowest = panel.spec().outline().box().minY();
      if (panel.spec().surface().equals("wall") && lowest < -Slivers.EXACTNESS) {
        found.accept(report.finding(Grade.WARNING, panel.spec().id(), "", Map.of("lowest", lowest), "depth",
            report.shown(-lowest)));
      }
    }
  }
}
