// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.tools;

import muralbench.base.Messages;
import muralbench.editor.internal.commands.AddOpeningCommand;
import muralbench.editor.internal.commands.AddPanelCommand;
import muralbench.editor.internal.parts.ScenePart;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.tools.CreationTool;

/** Puts a new thing onto the wall and selects it. */
public final class NewThingTool extends CreationTool {
  private static final Messages TEXTS = Messages.of(NewThingTool.class);

  /** The pointer may not have moved since the tool was chosen, so that the place of the click is looked at again. */
  @Override
  protected boolean handleButtonDown(int button) {
    if (isInState(STATE_INITIAL)) {
      updateTargetRequest();
      updateTargetUnderMouse();
    }
    boolean handled = super.handleButtonDown(button);
    if (isInState(STATE_DRAG)) {
      setCurrentCommand(getCommand());
    }
    return handled;
  }

  private static void sayWhere(EditPartViewer viewer) {
    if (viewer != null && viewer.getContents() instanceof ScenePart wall) {
      wall.scene().status().accept(TEXTS.text("opening.outside"));
    }
  }

  @Override
  protected void performCreation(int button) {
    Command command = getCurrentCommand();
    EditPartViewer viewer = getCurrentViewer();
    if (command == null) {
      sayWhere(viewer);
      return;
    }
    executeCurrentCommand();
    Object made = command instanceof AddPanelCommand add ? add.panel()
        : command instanceof AddOpeningCommand add ? add.opening() : null;
    if (viewer.getEditPartRegistry().get(made) instanceof EditPart part) {
      viewer.flush();
      viewer.select(part);
    }
  }
}
