// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.List;
import java.util.function.ToIntFunction;

/**
 * The set-out of a whole mural.
 *
 * @param spec what was asked for
 * @param panels the panels in the order of the mural
 */
public record MuralSetOut(MuralSpec spec, List<PanelSetOut> panels) {
  public MuralSetOut {
    panels = List.copyOf(panels);
  }

  /** The number of pieces. */
  public int pieces() {
    return sum(panel -> panel.pieces().size());
  }

  /** The number of whole tiles. */
  public int whole() {
    return sum(PanelSetOut::whole);
  }

  /** The number of cut pieces. */
  public int cut() {
    return sum(PanelSetOut::cut);
  }

  /** The number of tiles the pieces come from, without spares. */
  public int tilesToOrder() {
    return sum(PanelSetOut::tilesToOrder);
  }

  private int sum(ToIntFunction<PanelSetOut> count) {
    return panels.stream().mapToInt(count).sum();
  }
}
