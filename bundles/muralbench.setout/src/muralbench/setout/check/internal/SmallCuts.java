// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;

/** Normally no cut is smaller than half a tile: ANSI A108.02 §4.3.2, as quoted in the trade press. */
public final class SmallCuts implements Rule {
  /** How many cut pieces of a panel are smaller than half a tile. */
  public static int count(PanelSetOut panel) {
    return NarrowPieces.underHalf(panel).count();
  }

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("cut.small", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      NarrowPieces small = NarrowPieces.underHalf(panel);
      if (!small.none()) {
        found.accept(small.finding(report, Grade.WARNING));
      }
    }
  }
}
