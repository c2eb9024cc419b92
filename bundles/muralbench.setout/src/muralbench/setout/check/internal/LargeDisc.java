// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;

/** A disc in the middle of rings that is larger than the tile cannot be cut from it, and is hardly what was meant. */
final class LargeDisc implements Rule {
  static final String DISC = "disc";

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("ring.disc", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      double tile = Math.min(panel.spec().tile().width(), panel.spec().tile().height());
      for (Piece piece : panel.field()) {
        // The part first: the box of every face of a facade would be worked out for nothing.
        Box face = piece.cell().part().equals(DISC) ? piece.cell().face().box() : null;
        if (face != null && face.width() > tile + Report.ROUNDING) {
          found.accept(report.finding(Grade.WARNING, panel.spec().id(), "",
              Map.of("panel", panel.spec().id(), "diameter", face.width(), "tile", tile), "panel", panel.spec().id(),
              "diameter", report.shown(face.width()), "tile", report.shown(tile), "key", piece.key()));
        }
      }
    }
  }
}
