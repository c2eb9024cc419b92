// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;

/**
 * Strips of an inch or less break in the cutting and show. No standard gives a number; this one is common practice, and
 * so it is advice only.
 */
final class Slivers implements Rule {
  /** The set-out is exact to this, mm. */
  static final double EXACTNESS = 0.001;

  /** 1 in. */
  private static final double NARROW = 25.4;

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("cut.sliver", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      NarrowPieces slivers = NarrowPieces.underHalf(panel).under(NARROW - EXACTNESS);
      if (!slivers.none()) {
        found.accept(slivers.finding(report, Grade.ADVICE));
      }
    }
  }
}
