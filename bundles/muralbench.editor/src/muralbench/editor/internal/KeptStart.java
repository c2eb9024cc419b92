// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import muralbench.base.InputException;
import muralbench.setout.OpeningDrag;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.BondRegistry;

/** Sets a panel of many tiles out around an opening that is dragged, with the start that its pattern has. */
public final class KeptStart implements OpeningFollower.Step {
  private final PanelSetOut begun;
  private final String opening;
  private final BondRegistry bonds;
  private OpeningDrag drag;

  /**
   * Nothing is computed yet.
   *
   * @param begun the panel before the drag
   * @param opening id of the opening
   */
  public KeptStart(PanelSetOut begun, String opening, BondRegistry bonds) {
    this.begun = begun;
    this.opening = opening;
    this.bonds = bonds;
  }

  @Override
  public PanelSetOut of(PanelSpec asked) throws InputException {
    if (drag == null) {
      drag = OpeningDrag.of(begun, opening, bonds);
    }
    OpeningSpec now = asked.openings().stream().filter(one -> one.id().equals(opening)).findFirst().orElseThrow();
    return drag.moved(now.outline());
  }
}
