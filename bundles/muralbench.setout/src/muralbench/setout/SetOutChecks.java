// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import muralbench.base.Finding;
import muralbench.setout.check.internal.Rule;

/** Looks over a set-out and reports what breaks the rules of layout and joints. */
public final class SetOutChecks {
  private SetOutChecks() {}

  /** The findings for a mural, heaviest first, then in the order of the panels, then what concerns the whole mural. */
  public static List<Finding> findings(MuralSetOut setOut) {
    List<Finding> findings = new ArrayList<>();
    Rule.all().forEach(rule -> rule.look(setOut, findings::add));
    Map<String, Integer> order = places(setOut);
    findings.sort(Comparator.comparing(Finding::grade)
        .thenComparing(finding -> order.getOrDefault(finding.place(), Integer.MAX_VALUE)));
    return List.copyOf(findings);
  }

  /** For each id of a panel or opening a number that grows from panel to panel. */
  private static Map<String, Integer> places(MuralSetOut setOut) {
    Map<String, Integer> places = new HashMap<>();
    for (PanelSetOut panel : setOut.panels()) {
      int number = places.size();
      panel.spec().openings().forEach(opening -> places.put(opening.id(), number));
      places.put(panel.spec().id(), number);
    }
    return places;
  }
}
