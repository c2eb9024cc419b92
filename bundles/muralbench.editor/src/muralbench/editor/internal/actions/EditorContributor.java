// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.actions;

import muralbench.editor.internal.Icons;
import org.eclipse.gef.ui.actions.ActionBarContributor;
import org.eclipse.gef.ui.actions.DeleteRetargetAction;
import org.eclipse.gef.ui.actions.GEFActionConstants;
import org.eclipse.gef.ui.actions.RedoRetargetAction;
import org.eclipse.gef.ui.actions.UndoRetargetAction;
import org.eclipse.gef.ui.actions.ZoomInRetargetAction;
import org.eclipse.gef.ui.actions.ZoomOutRetargetAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.RetargetAction;

/** What the menus and the tool bar offer while the editor is active. */
public final class EditorContributor extends ActionBarContributor {
  private static final String VIEW_MENU = "muralbench.editor.view";
  private static final String[] ZOOM =
      {GEFActionConstants.ZOOM_IN, GEFActionConstants.ZOOM_OUT, WallActions.ZOOM_FIT};

  @Override
  protected void buildActions() {
    addRetargetAction(new UndoRetargetAction());
    addRetargetAction(new RedoRetargetAction());
    addRetargetAction(new DeleteRetargetAction());
    addRetargetAction(new ZoomInRetargetAction());
    addRetargetAction(new ZoomOutRetargetAction());
    RetargetAction fit = new RetargetAction(WallActions.ZOOM_FIT, WallActions.TEXTS.text("zoomFit"));
    fit.setImageDescriptor(Icons.small("fit"));
    fit.setToolTipText(WallActions.TEXTS.text("zoomFit.hint"));
    addRetargetAction(fit);
  }

  @Override
  protected void declareGlobalActionKeys() {
    addGlobalActionKey(ActionFactory.SELECT_ALL.getId());
  }

  @Override
  public void contributeToMenu(IMenuManager menu) {
    MenuManager view = new MenuManager(WallActions.TEXTS.text("view"), VIEW_MENU);
    for (String id : ZOOM) {
      view.add(getAction(id));
    }
    if (menu.find(IWorkbenchActionConstants.M_EDIT) == null) {
      menu.add(view);
    } else {
      menu.insertAfter(IWorkbenchActionConstants.M_EDIT, view);
    }
  }

  @Override
  public void contributeToToolBar(IToolBarManager bar) {
    for (ActionFactory action : new ActionFactory[] {ActionFactory.UNDO, ActionFactory.REDO, ActionFactory.DELETE}) {
      bar.add(getAction(action.getId()));
    }
    bar.add(new Separator());
    for (String id : ZOOM) {
      bar.add(getAction(id));
    }
  }
}
