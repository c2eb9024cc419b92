// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import muralbench.editor.internal.commands.PanelSource;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.model.TileKind;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Which panels a panel can take something from. */
final class PanelChoices {
  private static final double SAME = 1e-9;

  private PanelChoices() {}

  /** Whether a panel can take from another without taking from itself in the end. */
  static boolean free(Panel panel, Panel other) {
    Panel at = other;
    for (int i = 0; i < 10_000 && at != null; i++) {
      if (at == panel) {
        return false;
      }
      at = PanelSource.of(at);
    }
    return at == null;
  }

  /** Whether the level line of another panel can be that of a panel, as far as can be told without setting out. */
  static boolean level(Panel panel, Panel other) {
    return free(panel, other) && panel.getSurface() == other.getSurface();
  }

  /** Whether the grid of another panel can run on in a panel. */
  static boolean grid(Panel panel, Panel other) {
    return level(panel, other) && !(other.getOutline() instanceof RepeatedOutline)
        && sameSize(panel.getTileKind(), other.getTileKind())
        && Math.abs(panel.getJoint() - other.getJoint()) < SAME && EcoreUtil.equals(panel.getBond(), other.getBond());
  }

  private static boolean sameSize(TileKind one, TileKind other) {
    return one != null && other != null && Math.abs(one.getWidth() - other.getWidth()) < SAME
        && Math.abs(one.getHeight() - other.getHeight()) < SAME;
  }
}
