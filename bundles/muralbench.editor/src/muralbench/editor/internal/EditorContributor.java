// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import org.eclipse.gef.ui.actions.ActionBarContributor;
import org.eclipse.gef.ui.actions.DeleteRetargetAction;
import org.eclipse.gef.ui.actions.RedoRetargetAction;
import org.eclipse.gef.ui.actions.UndoRetargetAction;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.ui.actions.ActionFactory;

/** What the menus and the tool bar offer while the editor is active. */
public final class EditorContributor extends ActionBarContributor {
  @Override
  protected void buildActions() {
    addRetargetAction(new UndoRetargetAction());
    addRetargetAction(new RedoRetargetAction());
    addRetargetAction(new DeleteRetargetAction());
  }

  @Override
  protected void declareGlobalActionKeys() {
    addGlobalActionKey(ActionFactory.SELECT_ALL.getId());
  }

  @Override
  public void contributeToToolBar(IToolBarManager bar) {
    bar.add(getAction(ActionFactory.UNDO.getId()));
    bar.add(getAction(ActionFactory.REDO.getId()));
    bar.add(getAction(ActionFactory.DELETE.getId()));
  }
}
