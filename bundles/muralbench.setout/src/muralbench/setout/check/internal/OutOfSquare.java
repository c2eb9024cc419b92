// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.base.length.LengthUnit;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.survey.OutOfTrue;

/** Tells how far a measured wall is out of square, level and plumb; a floor only out of square. */
final class OutOfSquare implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    for (PanelSetOut panel : mural.panels()) {
      finding(panel.spec(), mural.spec().units()).ifPresent(found);
    }
  }

  private static Optional<Finding> finding(PanelSpec panel, LengthUnit units) {
    boolean floor = panel.surface().equals("floor");
    List<OutOfTrue> all = panel.survey().map(wall -> OutOfTrue.of(wall, floor, units)).orElse(List.of());
    if (all.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Object> values = new LinkedHashMap<>();
    all.forEach(one -> values.put(one.place(), one.off()));
    return Optional.of(new Report("survey.square", units).finding(Grade.ADVICE, panel.id(), "", values, "list",
        OutOfTrue.words(all, units)));
  }
}
