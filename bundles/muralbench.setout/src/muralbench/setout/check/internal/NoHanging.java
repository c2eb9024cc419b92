// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.board.BoardPlan;

/** A removable panel needs room for its hanging points, and a board that is there at all. */
final class NoHanging implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("panel.hanging", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      if (panel.spec().mounting().equals("removable") && BoardPlan.of(panel).points().isEmpty()) {
        found.accept(report.finding(Grade.ADVICE, panel.spec().id(), "", Map.of()));
      }
    }
  }
}
