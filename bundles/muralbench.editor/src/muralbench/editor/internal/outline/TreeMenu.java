// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.outline;

import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.commands.AddTileCommand;
import org.eclipse.gef.ContextMenuProvider;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.actions.ActionFactory;

/** The context menu of the tree. */
final class TreeMenu extends ContextMenuProvider {
  private static final Messages TEXTS = Messages.of(TreeMenu.class);

  private final OpenMural mural;
  private final ActionRegistry actions;

  TreeMenu(EditPartViewer viewer, OpenMural mural, ActionRegistry actions) {
    super(viewer);
    this.mural = mural;
    this.actions = actions;
  }

  @Override
  public void buildContextMenu(IMenuManager menu) {
    menu.add(new Action(TEXTS.text("newTile")) {
      @Override
      public void run() {
        addTile();
      }
    });
    menu.add(new Separator());
    for (ActionFactory action : new ActionFactory[] {ActionFactory.UNDO, ActionFactory.REDO, ActionFactory.DELETE}) {
      menu.add(actions.getAction(action.getId()));
    }
  }

  private void addTile() {
    AddTileCommand add = new AddTileCommand(mural.mural());
    mural.execute(add);
    if (getViewer().getEditPartRegistry().get(add.tile()) instanceof EditPart part) {
      getViewer().select(part);
    }
  }
}
