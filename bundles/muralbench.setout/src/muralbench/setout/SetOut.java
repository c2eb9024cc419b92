// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.internal.Layings;
import muralbench.setout.internal.PanelEngine;

/** Sets out murals and panels: from outline, bond and origin to keyed pieces. */
public final class SetOut {
  /** The largest distance between a curve and the chords that stand for it while pieces are cut, mm. */
  public static final double CHORD_ERROR = 0.001;

  /** Remains below this area are arithmetic dust and dropped, mm². */
  public static final double DUST_AREA = 0.01;

  private SetOut() {}

  /**
   * Sets out all panels.
   *
   * @throws InputException naming the panel or opening if something cannot be set out: a self-crossing outline, an opening
   *     outside its panel, a tile larger than the panel, nothing left after the openings, an unknown bond
   */
  public static MuralSetOut mural(MuralSpec mural, BondRegistry bonds, Progress progress) throws InputException {
    Layings layings = new Layings(bonds, mural.units(), progress);
    List<PanelSetOut> panels = new ArrayList<>(mural.panels().size());
    for (PanelSpec panel : mural.panels()) {
      panels.add(layings.of(panel));
    }
    return new MuralSetOut(mural, panels);
  }

  /**
   * Sets out one panel; see {@link #mural}.
   *
   * @param units the units of the lengths in errors
   */
  public static PanelSetOut panel(PanelSpec panel, BondRegistry bonds, LengthUnit units, Progress progress)
      throws InputException {
    return PanelEngine.setOut(panel, bonds, units, progress);
  }

  /** Sets out one panel; see {@link #mural}. Errors give lengths in millimetres. */
  public static PanelSetOut panel(PanelSpec panel, BondRegistry bonds, Progress progress) throws InputException {
    return PanelEngine.setOut(panel, bonds, LengthUnit.MILLIMETRE, progress);
  }
}
