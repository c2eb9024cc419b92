// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.base.length.LengthText;
import muralbench.setout.MuralSetOut;
import muralbench.setout.MuralSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementPlan;
import muralbench.setout.movement.Thermal;

/**
 * How far the tile of panels outdoors grows and shrinks between movement joints, and how wide a joint with sealant has to
 * be for that: coefficient x length x difference of temperature, and ASTM C1472 without its allowances.
 */
final class ThermalMovement implements Rule {
  /** Of ceramic tile, millionths per °C: the upper end of 4.1 to 8.1 in a ceramics reference. */
  private static final double USUAL_EXPANSION = 8.1;
  private static final double MILLIONTH = 1e-6;
  /** What common sealants for joints in tile take, percent of the width. */
  private static final double CAPABILITY = 25;

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    if (mural.spec().exposure().startsWith("exterior")) {
      mural.panels().forEach(panel -> found.accept(movement(panel, mural.spec())));
    }
  }

  private static Finding movement(PanelSetOut panel, MuralSpec mural) {
    Report report = new Report("movement.thermal", mural.units());
    double given = panel.spec().tile().expansion();
    double expansion = given > 0 ? given : USUAL_EXPANSION;
    double bay = MovementPlan.greatestBay(panel, panel.movement().stream().map(MovementJoint::line).toList());
    double celsius = Thermal.celsius(mural.swing());
    double growth = Thermal.growth(expansion * MILLIONTH, bay, celsius);
    double least = Thermal.sealantWidth(growth, CAPABILITY);
    double width = panel.movement().stream().mapToDouble(MovementJoint::width).min().orElse(least);
    boolean narrow = width < least - Report.ROUNDING;
    return report.finding(narrow ? Grade.WARNING : Grade.ADVICE, panel.spec().id(), narrow ? ".narrow" : "",
        Map.of("bay", bay, "swing", celsius, "expansion", expansion, "growth", growth, "least", least), "bay",
        report.shown(bay), "growth", LengthText.fine(growth, mural.units()), "fahrenheit", whole(mural.swing()),
        "celsius", whole(celsius), "least", report.limit(least), "width", report.below(width), "assumed",
        assumed(given > 0, mural, report));
  }

  /** What of it was not given and is taken as usual. */
  private static String assumed(boolean expansionKnown, MuralSpec mural, Report report) {
    boolean swingKnown = mural.temperatureSwing() > 0;
    return expansionKnown ? swingKnown ? "" : report.text(".assumed.swing")
        : report.text(swingKnown ? ".assumed.expansion" : ".assumed", "expansion", USUAL_EXPANSION);
  }

  private static String whole(double value) {
    return BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_UP).toPlainString();
  }
}
