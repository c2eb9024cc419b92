// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.board.BoardPlan;
import muralbench.setout.board.PanelMass;

/**
 * Whether one person may lift a removable panel: 23 kg (51 lb), the load constant of the NIOSH lifting equation
 * (publication 94-110), which holds for the best of circumstances.
 */
final class PanelLift implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("panel.lift", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      if (panel.spec().mounting().equals("removable")) {
        look(panel, report, found);
      }
    }
  }

  private static void look(PanelSetOut panel, Report report, Consumer<Finding> found) {
    String tile = panel.spec().tile().id();
    BoardPlan plan = BoardPlan.of(panel);
    if (plan.mass().isEmpty()) {
      found.accept(report.finding(Grade.ADVICE, panel.spec().id(), ".unknown", Map.of("tile", tile), "tile", tile));
    } else if (plan.mass().get().total() > PanelMass.ONE_PERSON) {
      found.accept(heavy(panel.spec().id(), plan.mass().get(), report));
    }
  }

  private static Finding heavy(String panel, PanelMass mass, Report report) {
    return report.finding(Grade.WARNING, panel, "",
        Map.of("mass", mass.total(), "most", PanelMass.ONE_PERSON, "tile", mass.tile(), "adhesive", mass.adhesive(),
            "board", mass.board()),
        "mass", up(mass.total()), "pounds", up(mass.total() / PanelMass.POUND), "tile", up(mass.tile()), "adhesive",
        up(mass.adhesive()), "board", up(mass.board()));
  }

  /** To 0.1, up, so that it never reads like the limit it is over. */
  private static String up(double value) {
    return BigDecimal.valueOf(value).setScale(1, RoundingMode.UP).toPlainString();
  }
}
