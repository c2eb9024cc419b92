// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.List;
import muralbench.base.length.LengthUnit;
import muralbench.setout.movement.MovementRule;
import muralbench.setout.order.Allowances;

/**
 * What the set-out and the sheets need to know of a mural.
 *
 * @param title title of the work, may be empty
 * @param client client, may be empty
 * @param revision revision mark, may be empty
 * @param units units of display
 * @param exposure {@code interior-dry}, {@code interior-wet}, {@code exterior} or {@code exterior-frost}
 * @param panels panels in story order
 * @param temperatureSwing how far the temperature of the tile's surface swings in a year, °C, 0 when not known
 * @param allowances spares and boxes
 */
public record MuralSpec(String title, String client, String revision, LengthUnit units, String exposure,
    List<PanelSpec> panels, double temperatureSwing, Allowances allowances) {
  public MuralSpec {
    panels = List.copyOf(panels);
  }

  /** How far the temperature of the tile's surface swings, °F; the one that asks for nothing more where it is not known. */
  public double swing() {
    return temperatureSwing == 0 ? MovementRule.PLAIN_SWING : temperatureSwing * 9 / 5;
  }

  /** A mural with spares by common practice, its temperatures not known. */
  public MuralSpec(String title, String client, String revision, LengthUnit units, String exposure,
      List<PanelSpec> panels) {
    this(title, client, revision, units, exposure, panels, 0, Allowances.commonPractice());
  }
}
