// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;

/** Wedges of rings that the tile of the panel does not yield; for discs there is {@link LargeDisc}. */
final class LargeBlank implements Rule {
  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("ring.blank", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      String tile = panel.spec().tile().id();
      Map<String, List<Piece>> large = panel.field().stream()
          .filter(piece -> !piece.cell().face().straight() && !piece.tile().equals(tile))
          .filter(piece -> !piece.cell().part().equals(LargeDisc.DISC))
          .collect(Collectors.groupingBy(Piece::tile));
      large.values().stream().map(pieces -> pieces.get(0)).sorted((a, b) -> a.key().compareTo(b.key()))
          .forEach(piece -> found.accept(finding(report, panel, piece, large.get(piece.tile()).size())));
    }
  }

  private static Finding finding(Report report, PanelSetOut panel, Piece piece, int count) {
    double across = Math.max(piece.cell().face().box().width(), piece.cell().face().box().height());
    return report.finding(Grade.WARNING, panel.spec().id(), "", Map.of("across", across, "count", count), "tile",
        panel.spec().tile().id(), "part", piece.tile().substring(panel.spec().tile().id().length() + 1), "key",
        piece.key(), "across", report.shown(across), "count", count);
  }
}
