// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSetOut;

/** Tiles are cut and set round a live box: common practice is to have the circuit isolated first. */
final class ElectricalOpening implements Rule {
  private static final Set<String> ELECTRICAL = Set.of("outlet", "switch");

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("opening.electrical", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      for (OpeningSpec opening : panel.spec().openings()) {
        if (ELECTRICAL.contains(opening.kind())) {
          found.accept(report.finding(Grade.ADVICE, opening.id(), "", Map.of("panel", panel.spec().id(), "kind",
              opening.kind()), "opening", opening.id(), "panel", panel.spec().id(), "kind", opening.kind()));
        }
      }
    }
  }
}
