// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import muralbench.base.length.LengthText;
import muralbench.export.internal.PlainNumber;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.board.BoardPlan;
import muralbench.setout.board.PanelMass;

/**
 * The boards of removable panels: size, mass by part and hanging points.
 *
 * @param setOut the mural
 */
record BoardTable(MuralSetOut setOut) {
  /** One row for each panel that can be taken down. */
  Table table() {
    List<List<Object>> rows = new ArrayList<>();
    for (PanelSetOut panel : setOut.panels()) {
      if (panel.spec().mounting().equals("removable")) {
        rows.add(row(panel.spec().id(), BoardPlan.of(panel)));
      }
    }
    return new Table(List.of("panel", "board_width", "board_height", "tile_mass", "adhesive_mass", "board_mass", "mass",
        "hanging_points", "hanging_height", "hanging_places", "hanging_load", "edge"), rows);
  }

  private List<Object> row(String panel, BoardPlan plan) {
    Optional<PanelMass> mass = plan.mass();
    String height = plan.points().isEmpty() ? "" : shown(plan.points().get(0).y());
    String places = plan.points().stream().map(point -> shown(point.x())).collect(Collectors.joining(", "));
    return List.of(panel, shown(plan.width()), shown(plan.height()), kilograms(mass.map(PanelMass::tile)),
        kilograms(mass.map(PanelMass::adhesive)), kilograms(mass.map(PanelMass::board)),
        kilograms(mass.map(PanelMass::total)), plan.points().size(), height, places, kilograms(plan.load()),
        plan.spec().edge());
  }

  private static Object kilograms(Optional<Double> mass) {
    return mass.<Object>map(value -> Double.valueOf(PlainNumber.rounded(value, 1))).orElse("");
  }

  private String shown(double length) {
    return LengthText.shown(length, setOut.spec().units());
  }
}
