// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.geometry.Vec;
import muralbench.setout.survey.AdjustedWall;

/** Measurements that are just enough check nothing: the diagonals can be taped and held against the wall. */
final class UncheckedSurvey implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("survey.unchecked", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      panel.spec().survey().filter(wall -> wall.spare() == 0)
          .ifPresent(wall -> found.accept(finding(report, panel.spec().id(), wall)));
    }
  }

  private static Finding finding(Report report, String panel, AdjustedWall wall) {
    List<Vec> corners = wall.fourCorners();
    double rising = corners.get(0).distance(corners.get(2));
    double falling = corners.get(3).distance(corners.get(1));
    return report.finding(Grade.ADVICE, panel, "", Map.of("rising", rising, "falling", falling), "rising",
        report.shown(rising), "falling", report.shown(falling));
  }
}
