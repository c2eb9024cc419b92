// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.util.List;
import muralbench.export.internal.pdf.Placing;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;

/**
 * One sheet of a panel.
 *
 * @param layout how the sheet is divided
 * @param gutters what lies around the elevation
 * @param row row of its window, from 0 at the bottom
 * @param column column of its window, from 0 at the left
 * @param window the part of the panel it shows, in the wall plane
 * @param placing how the panel lies on the sheet
 * @param pieces the pieces that show, whole or in part
 * @param keys the keys it carries
 * @param names names of openings it carries
 */
record SheetPlan(SheetLayout layout, Gutters gutters, int row, int column, Box window, Placing placing,
    List<Piece> pieces, List<Label> keys, List<Label> names) {
  SheetPlan {
    pieces = List.copyOf(pieces);
    keys = List.copyOf(keys);
    names = List.copyOf(names);
  }

  /** The window on paper. */
  Box shown() {
    return placing.of(window);
  }
}
