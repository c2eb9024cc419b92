// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.SetOut;

/** Two openings of one panel in one place are mostly a slip. */
final class OverlappingOpenings implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("openings.overlap", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      List<OpeningSpec> openings = panel.spec().openings();
      for (int i = 0; i < openings.size(); i++) {
        for (int j = 0; j < i; j++) {
          OpeningSpec first = openings.get(j);
          OpeningSpec second = openings.get(i);
          double shared = Overlap.area(first.outline(), second.outline());
          if (shared > SetOut.DUST_AREA) {
            found.accept(report.finding(Grade.WARNING, second.id(), "", Map.of("area", shared), "first", first.id(),
                "second", second.id(), "panel", panel.spec().id()));
          }
        }
      }
    }
  }
}
