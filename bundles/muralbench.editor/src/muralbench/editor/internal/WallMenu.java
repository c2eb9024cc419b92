// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import org.eclipse.gef.ContextMenuProvider;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.actions.ActionFactory;

/** The context menu of the wall; other plug-ins join it at the group {@code panel}. */
public final class WallMenu extends ContextMenuProvider {
  /** Identifier that menu contributions name. */
  public static final String ID = "muralbench.editor.wall";

  private final ActionRegistry actions;

  /** A menu for a viewer. */
  public WallMenu(EditPartViewer viewer, ActionRegistry actions) {
    super(viewer);
    this.actions = actions;
  }

  @Override
  public void buildContextMenu(IMenuManager menu) {
    menu.add(new GroupMarker("panel"));
    menu.add(new Separator("edit"));
    for (ActionFactory action : new ActionFactory[] {ActionFactory.UNDO, ActionFactory.REDO, ActionFactory.DELETE}) {
      menu.add(actions.getAction(action.getId()));
    }
    menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
  }
}
