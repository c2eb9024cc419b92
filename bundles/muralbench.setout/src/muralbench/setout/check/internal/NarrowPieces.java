// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PieceKind;
import muralbench.setout.joint.JointRules;

/** Narrow pieces of one panel, told in one finding however many there are. */
final class NarrowPieces {
  private static final int NAMED = 5;

  private final String panel;
  private final List<Narrowness> pieces;

  private NarrowPieces(String panel, List<Narrowness> pieces) {
    this.panel = panel;
    this.pieces = pieces;
  }

  /**
   * Cut pieces of which less than half a tile is left in some direction. Where courses are offset, half a tile is what
   * two halves and the joint between them make, so half a joint less will do.
   */
  static NarrowPieces underHalf(PanelSetOut panel) {
    double missing = JointRules.of(panel.spec()).offset() > 0 ? panel.spec().joint() / 2 : 0;
    return new NarrowPieces(panel.spec().id(), panel.pieces().stream().filter(piece -> piece.kind() != PieceKind.WHOLE)
        .map(Narrowness::of).filter(piece -> piece.width() < piece.face() / 2 - missing - Slivers.EXACTNESS)
        .sorted(Comparator.comparingLong(NarrowPieces::exactly)).toList());
  }

  /** The width in steps of what the set-out is exact to; equal widths stay in the order of the pieces. */
  private static long exactly(Narrowness piece) {
    return Math.round(piece.width() / Slivers.EXACTNESS);
  }

  /** Those of these that are narrower than a width, mm. */
  NarrowPieces under(double width) {
    return new NarrowPieces(panel, pieces.stream().filter(piece -> piece.width() < width).toList());
  }

  int count() {
    return pieces.size();
  }

  boolean none() {
    return pieces.isEmpty();
  }

  Finding finding(Report report, Grade grade) {
    double smallest = pieces.get(0).width();
    List<String> worst = pieces.stream().limit(NAMED).map(Narrowness::key).toList();
    return report.finding(grade, panel, pieces.size() == 1 ? ".one" : "",
        Map.of("count", pieces.size(), "smallestWidth", smallest, "keys", worst),
        "count", pieces.size(), "width", report.shown(smallest), "keys", named(worst));
  }

  private String named(List<String> worst) {
    return worst.stream().collect(Collectors.joining(", ")) + (pieces.size() > worst.size() ? " …" : "");
  }
}
