// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.tools;

import muralbench.editor.internal.commands.AddOpeningCommand;
import muralbench.editor.internal.commands.AddPanelCommand;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.tools.CreationTool;

/** Puts a new thing onto the wall and selects it. */
public final class NewThingTool extends CreationTool {
  @Override
  protected void performCreation(int button) {
    Command command = getCurrentCommand();
    EditPartViewer viewer = getCurrentViewer();
    executeCurrentCommand();
    Object made = command instanceof AddPanelCommand add ? add.panel()
        : command instanceof AddOpeningCommand add ? add.opening() : null;
    if (viewer.getEditPartRegistry().get(made) instanceof EditPart part) {
      viewer.flush();
      viewer.select(part);
    }
  }
}
