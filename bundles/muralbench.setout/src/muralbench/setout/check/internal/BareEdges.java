// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.BoardSpec;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;

/** The edges of a panel that is taken down and put up again chip where nothing guards them: common practice. */
final class BareEdges implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("panel.edge", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      BoardSpec board = panel.spec().board();
      if (panel.spec().mounting().equals("removable") && board.edge().equals("none")) {
        double over = Math.max(0, -board.reveal() - panel.spec().edgeGap());
        boolean overhangs = over > Report.ROUNDING;
        found.accept(report.finding(overhangs ? Grade.WARNING : Grade.ADVICE, panel.spec().id(), overhangs ? ".over" : "",
            Map.of("reveal", board.reveal()), "over", report.limit(over)));
      }
    }
  }
}
