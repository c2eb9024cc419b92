// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import muralbench.editor.internal.commands.RepeatPanelCommand;
import muralbench.model.Mural;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;

/** Panels that repeat others. */
public final class RepeatedPanel {
  private RepeatedPanel() {}

  /** Adds a panel that repeats another one to its right; one step of undo. */
  public static ModelCommand command(Mural mural, Panel panel, boolean mirrored) {
    return new RepeatPanelCommand(mural, panel, mirrored);
  }

  /** The panel whose layout a panel has: itself, unless it repeats another. */
  public static Panel original(Panel panel) {
    Panel original = panel;
    int most = panel.eContainer() instanceof Mural mural ? mural.getPanels().size() : 1;
    for (int i = 0; i < most && original.getOutline() instanceof RepeatedOutline repeated
        && repeated.getPanel() != null; i++) {
      original = repeated.getPanel();
    }
    return original;
  }
}
