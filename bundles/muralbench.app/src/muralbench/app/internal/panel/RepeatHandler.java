// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import muralbench.editor.OpenMural;
import muralbench.editor.RepeatedPanel;
import muralbench.model.Panel;
import org.eclipse.swt.widgets.Shell;

/** Panel > Repeat Panel: the selected panel again, on its right. */
public class RepeatHandler extends PanelHandler {
  private final boolean mirrored;

  /** Repeats a panel as it is. */
  public RepeatHandler() {
    this(false);
  }

  RepeatHandler(boolean mirrored) {
    this.mirrored = mirrored;
  }

  @Override
  protected Panel meant(Panel selected) {
    return selected;
  }

  @Override
  protected final void open(Shell shell, OpenMural mural, Panel panel) {
    mural.execute(RepeatedPanel.command(mural.mural(), panel, mirrored));
  }
}
