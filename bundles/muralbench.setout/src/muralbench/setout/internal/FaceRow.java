// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.bond.Pattern.Axis;
import muralbench.setout.bond.Pattern.Run;
import muralbench.setout.geometry.Box;

/**
 * The row of equal faces that fills a panel from one end to the other along an axis of the wall.
 *
 * @param span length of the panel along the axis, before the edge gap, mm
 * @param face length of a face along the axis, mm
 */
public record FaceRow(double span, double face) {
  /**
   * The row along an axis of the wall; none where the faces do not all stand in line with each other, as along the
   * courses of a running bond, or stand askew.
   *
   * @param level whether along the wall rather than up
   * @throws InputException if the bond cannot be laid
   */
  public static Optional<FaceRow> of(PanelSpec panel, boolean level, BondRegistry bonds, LengthUnit units)
      throws InputException {
    double quarters = panel.bond().rotation() / 90;
    if (quarters != Math.rint(quarters)) {
      return Optional.empty();
    }
    boolean upright = Math.rint(quarters) % 2 != 0;
    Box box = panel.outline().box();
    Box turned = upright ? new Box(0, 0, box.height(), box.width()) : new Box(0, 0, box.width(), box.height());
    Axis axis = level == upright ? Axis.ACROSS : Axis.ALONG;
    List<Run> runs = new PanelEngine(panel, units).pattern(bonds).runs(axis, turned);
    return runs.size() == 1 ? Optional.of(new FaceRow(level ? box.width() : box.height(), runs.get(0).face()))
        : Optional.empty();
  }
}
