// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.List;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.internal.MovedOpening;

/**
 * Sets a panel out again and again while one of its openings is dragged about or made larger or smaller. Only the cells
 * that the opening meets are cut; the other pieces are used again, so that a step takes little time however many pieces
 * there are.
 *
 * <p>The start of the pattern and the joints that are opened to be movement joints stay where they are in the set-out that
 * is begun with, so that the field keeps still under the opening. A balanced start, and movement joints by a rule, are to
 * be found anew with {@link SetOut#panel} when the opening is let go. Until then every step equals
 * {@code SetOut.panel(asked(outline), …)} in every piece, except in panels that share a grid with movement joints: what
 * can be asked for there is the grid of the whole field, which is found anew.
 *
 * <p>A step does not depend on the steps before. Where the opening touches an edge of the panel, or another opening,
 * the panel is set out as a whole, which takes longer. Not to be used by two threads at a time.
 */
public final class OpeningDrag {
  private final MovedOpening opening;

  private OpeningDrag(MovedOpening opening) {
    this.opening = opening;
  }

  /**
   * Begins to drag an opening; takes about as long as a set-out with a given start.
   *
   * @param panel the set-out with the opening where it is
   * @param opening id of the opening
   * @param bonds the bonds {@code panel} was set out with
   * @param units the units in which errors give lengths
   * @throws InputException if the panel cannot be set out without the opening
   * @throws IllegalArgumentException if the panel has no such opening, or only repeats another panel that has it
   */
  public static OpeningDrag of(PanelSetOut panel, String opening, BondRegistry bonds, LengthUnit units)
      throws InputException {
    List<String> ids = panel.spec().openings().stream().map(OpeningSpec::id).toList();
    if (!ids.contains(opening) || panel.spec().origin() instanceof OriginSpec.Repeated) {
      throw new IllegalArgumentException("no opening " + opening + " in panel " + panel.spec().id());
    }
    return new OpeningDrag(MovedOpening.of(panel, ids.indexOf(opening), bonds, units));
  }

  /** As {@link #of(PanelSetOut, String, BondRegistry, LengthUnit)}; errors give lengths in millimetres. */
  public static OpeningDrag of(PanelSetOut panel, String opening, BondRegistry bonds) throws InputException {
    return of(panel, opening, bonds, LengthUnit.MILLIMETRE);
  }

  /** The panel as it is asked for when the opening has an outline: with the start and the opened joints given. */
  public PanelSpec asked(Contour outline) {
    return opening.asked(outline);
  }

  /**
   * The set-out when the opening has another outline, mostly its own after a {@link Contour#moved movement}.
   *
   * @param outline in the wall plane
   * @throws InputException as {@link SetOut#panel} throws it, such as for an opening that leaves its panel
   */
  public PanelSetOut moved(Contour outline) throws InputException {
    return opening.moved(outline);
  }
}
