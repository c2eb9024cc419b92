// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.commands;

import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.model.SharedOrigin;

/** What panels take from each other. */
public final class PanelSource {
  private PanelSource() {}

  /** The panel that a panel takes its layout, grid or level line from; null if there is none. */
  public static Panel of(Panel panel) {
    if (panel.getOutline() instanceof RepeatedOutline repeated) {
      return repeated.getPanel();
    }
    return panel.getOrigin() instanceof SharedOrigin shared ? shared.getPanel() : null;
  }
}
