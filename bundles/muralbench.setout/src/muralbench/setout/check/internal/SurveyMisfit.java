// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.base.Messages;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.survey.AdjustedWall;
import muralbench.setout.survey.Misfit;
import muralbench.setout.survey.Survey;

/**
 * A measurement that misses the adjusted wall by more than three times the accuracy of the tape cannot be right. A
 * warning where no single one misses by that much, but all together do: the standard error of unit weight, by which
 * surveyors judge an adjustment.
 */
final class SurveyMisfit implements Rule {
  private static final Messages NAMES = Messages.of(Survey.class);

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("survey.misfit", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      panel.spec().survey().ifPresent(wall -> look(report, panel.spec().id(), wall, found));
    }
  }

  private static void look(Report report, String panel, AdjustedWall wall, Consumer<Finding> found) {
    List<Misfit> suspects = wall.suspects();
    double limit = Survey.SUSPECT * wall.accuracy();
    if (!suspects.isEmpty()) {
      Misfit worst = suspects.get(0);
      String list = suspects.stream().map(misfit -> words(report, misfit)).collect(Collectors.joining("; "));
      found.accept(report.finding(Grade.ERROR, panel, "", Map.of("measurement", worst.measurement().name(), "off",
          worst.off(), "accuracy", wall.accuracy()), "list", list, "limit", report.shown(limit), "accuracy",
          report.shown(wall.accuracy())));
    } else if (wall.disagrees()) {
      found.accept(report.finding(Grade.WARNING, panel, ".together", Map.of("spread", wall.spread(), "accuracy",
          wall.accuracy()), "spread", report.limit(wall.spread()), "accuracy", report.shown(wall.accuracy())));
    }
  }

  private static String words(Report report, Misfit misfit) {
    String name = misfit.measurement().name();
    return NAMES.text(misfit.off() > 0 ? "survey.long" : "survey.short", "name", NAMES.text("survey." + name), "off",
        report.limit(Math.abs(misfit.off())));
  }
}
