// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelGap;
import muralbench.setout.PanelSpec;
import muralbench.setout.geometry.Box;

/**
 * Adjoining areas keep their horizontal joints in line: BS 5385-1:2018, 7.1.5. Panels adjoin each other here if they are of
 * one tile and joint, stand on or reach up to one height, and are no farther apart than the wider of them is wide.
 */
final class LevelCourses implements Rule {
  /** Heights and courses that differ by less look like one, 1/16 in. */
  private static final double ALIKE = 1.5875;

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("panels.level", mural.spec().units());
    for (PanelGap gap : PanelGap.of(mural.panels())) {
      OptionalDouble step = adjoin(gap) ? gap.step() : OptionalDouble.empty();
      if (step.isPresent() && Math.abs(step.getAsDouble()) > ALIKE + Report.ROUNDING) {
        String left = gap.left().spec().id();
        String right = gap.right().spec().id();
        found.accept(report.finding(Grade.ADVICE, right, "",
            Map.of("panels", List.of(left, right), "step", step.getAsDouble()), "left", left, "right", right, "step",
            report.shown(Math.abs(step.getAsDouble()))));
      }
    }
  }

  private static boolean adjoin(PanelGap gap) {
    PanelSpec left = gap.left().spec();
    PanelSpec right = gap.right().spec();
    Box one = left.outline().box();
    Box other = right.outline().box();
    boolean alike = left.tile().width() == right.tile().width() && left.tile().height() == right.tile().height()
        && left.joint() == right.joint();
    boolean height = Math.abs(gap.rise()) < ALIKE || Math.abs(one.maxY() - other.maxY()) < ALIKE;
    return alike && height && gap.across() <= Math.max(one.width(), other.width());
  }
}
