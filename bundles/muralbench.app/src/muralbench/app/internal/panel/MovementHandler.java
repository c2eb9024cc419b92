// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import muralbench.app.internal.Problems;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import muralbench.model.Panel;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;

/** Panel > Movement Joints. */
public final class MovementHandler extends PanelHandler {
  @Override
  protected void open(Shell shell, OpenMural mural, Panel panel) {
    try {
      MovementDialog dialog = new MovementDialog(shell, mural, panel);
      if (dialog.open() == Window.OK && !dialog.choice().equals(MovementChoice.of(panel))) {
        mural.execute(PanelChange.movement(mural.mural(), panel, dialog.choice()));
      }
    } catch (InputException e) {
      Problems.show(shell, Messages.of(MovementHandler.class).text("movement.title"), e);
    }
  }
}
