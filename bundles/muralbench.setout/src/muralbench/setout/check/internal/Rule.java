// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.List;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.setout.MuralSetOut;

/** Looks over a set-out for one thing. Implementations keep nothing between calls. */
public interface Rule {
  /** Hands every finding to {@code found}, in the order of the panels. */
  void look(MuralSetOut mural, Consumer<Finding> found);

  /** All rules. */
  static List<Rule> all() {
    return List.of(new NarrowJoint(), new WideJoint(), new NarrowOffsetJoint(), new ClassJoint(), new LargeOffset(),
        new SmallCuts(), new Slivers(), new LargeDisc(), new ThinWebs(), new FrostBody(), new OverlappingPanels(),
        new OverlappingOpenings(), new LevelCourses(), new BelowFloor(), new ElectricalOpening(), new CuttingDust(),
        new LargeBlank(), new SurveyMisfit(), new UncheckedSurvey(),
        new OutOfSquare(), new MovementJoints(), new PerimeterJoints(), new PanelLift(),
        new BareEdges(), new NoHanging(), new ThermalMovement());
  }
}
