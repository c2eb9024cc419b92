// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** The outline of the field inside a closed band. */
final class FieldOutline {
  private FieldOutline() {}

  static Contour of(BandLayout layout) {
    BandPath path = layout.border().path().movedIn(layout.fieldDepth());
    double spare = overhang(layout.border());
    if (spare <= 0) {
      return path.contour();
    }
    List<Vec> corners = new ArrayList<>();
    List<BandSide> sides = path.sides();
    for (int i = 0; i < sides.size(); i++) {
      corners.addAll(notch(sides.get((i + sides.size() - 1) % sides.size()), sides.get(i), spare,
          layout.border().rows().get(layout.border().rows().size() - 1).width() + 2 * layout.joint()));
    }
    return Contour.polygon(corners).counterClockwise();
  }

  /** By how much the innermost corner tile is larger than its row, mm. */
  private static double overhang(Border border) {
    BandRow inner = border.rows().get(border.rows().size() - 1);
    return border.corner().ownTile() ? inner.cornerSize() - inner.width() : 0;
  }

  /** The corner of the field between two sides, around the corner tile that stands out of the row. */
  private static List<Vec> notch(BandSide before, BandSide after, double spare, double aside) {
    if (after.start() == BandEnd.CONVEX) {
      return List.of(before.at(before.length() - spare, 0), after.at(spare, spare), after.at(spare, 0));
    }
    // At an inner corner the tile lies beyond both runs, a joint from either; the field goes round three of its
    // corners.
    return List.of(before.at(before.length() - aside, 0), before.at(before.length() - aside, spare),
        before.at(before.length() + spare, spare), after.at(aside, spare), after.at(aside, 0));
  }
}
