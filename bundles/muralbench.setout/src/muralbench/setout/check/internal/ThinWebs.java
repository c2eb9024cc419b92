// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.geometry.NarrowWidth;

/**
 * The leg beside a notch and the web beside a hole break where they are thinner than the tile or than 1/2 in. No standard
 * gives a number; this one is common practice.
 */
final class ThinWebs implements Rule {
  /** 1/2 in. */
  private static final double LEAST = 12.7;
  private static final int NAMED = 5;

  private record Web(String key, double width) {}

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    Report report = new Report("cut.web", mural.spec().units());
    for (PanelSetOut panel : mural.panels()) {
      double least = Math.max(LEAST, panel.spec().tile().thickness());
      List<Web> thin = new ArrayList<>();
      for (Piece piece : panel.pieces()) {
        if (piece.kind() == PieceKind.NOTCHED || piece.kind() == PieceKind.PIERCED) {
          double width = NarrowWidth.of(piece.outline(), piece.holes());
          if (width < least - Slivers.EXACTNESS) {
            thin.add(new Web(piece.key(), width));
          }
        }
      }
      if (!thin.isEmpty()) {
        thin.sort(Comparator.comparingDouble(Web::width));
        found.accept(finding(report, panel.spec().id(), thin, least));
      }
    }
  }

  private static Finding finding(Report report, String panel, List<Web> thin, double least) {
    List<String> worst = thin.stream().limit(NAMED).map(Web::key).toList();
    String keys = worst.stream().collect(Collectors.joining(", ")) + (thin.size() > worst.size() ? " …" : "");
    return report.finding(Grade.WARNING, panel, thin.size() == 1 ? ".one" : "",
        Map.of("count", thin.size(), "smallestWidth", thin.get(0).width(), "keys", worst), "count", thin.size(),
        "width", report.shown(thin.get(0).width()), "keys", keys, "least", report.shown(least));
  }
}
