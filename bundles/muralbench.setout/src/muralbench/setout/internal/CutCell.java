// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.List;
import muralbench.setout.PieceKind;
import muralbench.setout.bond.Cell;
import muralbench.setout.geometry.Contour;

/** What is left of one cell of the bond; more than one part if an opening cuts it through. */
record CutCell(Cell cell, List<Part> parts) {
  /** One part, in the wall plane. */
  record Part(PieceKind kind, double area, Contour outline, List<Contour> holes) {}
}
