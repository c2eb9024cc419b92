// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.util.HashMap;
import java.util.Map;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;

/** How many tiles of each kind a panel needs at least, by area. */
final class LeastTiles {
  /** Areas that differ by less than this share of a face are the same. */
  private static final double ROUNDING = 1e-9;

  private static final class Sum {
    private double faces;
    private int large;
  }

  Map<String, Integer> of(PanelSetOut panel) {
    Map<String, Sum> sums = new HashMap<>();
    for (Piece piece : panel.pieces()) {
      double share = piece.area() / piece.cell().face().area();
      Sum sum = sums.computeIfAbsent(piece.tile(), tile -> new Sum());
      sum.faces += share;
      sum.large += share > 0.5 + ROUNDING ? 1 : 0;
    }
    Map<String, Integer> least = new HashMap<>();
    sums.forEach((tile, sum) -> least.put(tile,
        Math.max(sum.large, (int) Math.ceil(sum.faces - ROUNDING * Math.max(1, sum.faces)))));
    return least;
  }
}
