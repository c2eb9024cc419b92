// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import org.eclipse.gef.ui.actions.ActionBarContributor;
import org.eclipse.ui.actions.ActionFactory;

/** Ties the workbench's own actions to the active editor; menus, tool bar and zoom belong to the desktop. */
public final class EditorContributor extends ActionBarContributor {
  @Override
  protected void buildActions() {
    // The desktop has the actions; the editor only lends them their work.
  }

  @Override
  protected void declareGlobalActionKeys() {
    addGlobalActionKey(ActionFactory.UNDO.getId());
    addGlobalActionKey(ActionFactory.REDO.getId());
    addGlobalActionKey(ActionFactory.DELETE.getId());
    addGlobalActionKey(ActionFactory.SELECT_ALL.getId());
  }
}
