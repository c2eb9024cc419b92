// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.MuralSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.geometry.Box;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementLine;
import muralbench.setout.movement.MovementPlan;
import muralbench.setout.movement.MovementRule;

/** Says where movement joints are missing or too narrow: TCNA Handbook EJ171, see {@link MovementRule}. */
final class MovementJoints implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("movement.missing", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      MovementRule rule = MovementRule.of(mural.spec().exposure(), panel.spec().surface());
      double bay = MovementPlan.greatestBay(panel, panel.movement().stream().map(MovementJoint::line).toList());
      if (bay > rule.greatestSpacing() + Report.ROUNDING) {
        found.accept(missing(panel, MovementPlan.of(panel, mural.spec().exposure(), mural.spec().swing(), List.of()),
            mural.spec(), report));
      }
      narrow(panel, rule, bay, mural.spec()).ifPresent(found);
    }
  }

  private static Optional<Finding> narrow(PanelSetOut panel, MovementRule rule, double bay, MuralSpec mural) {
    double least = rule.leastWidth(bay, mural.swing(), panel.spec().joint());
    double width = panel.movement().stream().mapToDouble(MovementJoint::width).min().orElse(least);
    if (width >= least - Report.ROUNDING) {
      return Optional.empty();
    }
    Report report = new Report("movement.narrow", mural.units());
    return Optional.of(report.finding(Grade.WARNING, panel.spec().id(), "", Map.of("width", width, "least", least),
        "width", report.below(width), "least", report.limit(least)));
  }

  private static Finding missing(PanelSetOut panel, MovementPlan plan, MuralSpec mural, Report report) {
    Box field = MovementPlan.field(panel);
    boolean through = plan.lines().stream().anyMatch(MovementLine::throughTile);
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("spacing", plan.rule().greatestSpacing());
    values.put("width", plan.width());
    values.put("vertical", places(plan, MovementAxis.VERTICAL));
    values.put("horizontal", places(plan, MovementAxis.HORIZONTAL));
    String variant = (through ? ".through" : "") + (plan.lines().size() == 1 ? ".one" : "");
    String swing = !plan.rule().exterior() ? ".plain" : mural.temperatureSwing() > 0 ? ".swing.known" : ".swing";
    return report.finding(Grade.WARNING, panel.spec().id(), variant, values, "width", report.shown(field.width()),
        "height", report.shown(field.height()), "spacing", report.shown(plan.rule().greatestSpacing()), "count",
        plan.lines().size(), "list", plan.lines().stream().map(line -> words(line, field, report))
            .collect(Collectors.joining("; ")), "joint", report.shown(plan.width()), "swing",
        report.text(swing, "fahrenheit", Math.round(mural.swing())));
  }

  private static List<Double> places(MovementPlan plan, MovementAxis axis) {
    return plan.lines().stream().filter(line -> line.axis() == axis).map(MovementLine::at).toList();
  }

  private static String words(MovementLine line, Box field, Report report) {
    boolean vertical = line.axis() == MovementAxis.VERTICAL;
    double from = line.at() - (vertical ? field.minX() : field.minY());
    return report.text((vertical ? ".vertical" : ".horizontal") + (line.throughTile() ? ".cut" : ""), "at",
        report.shown(from));
  }
}
