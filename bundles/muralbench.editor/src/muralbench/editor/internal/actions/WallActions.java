// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.actions;

import muralbench.base.Messages;
import muralbench.editor.internal.WallView;
import muralbench.editor.internal.parts.WallZoom;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.KeyHandler;
import org.eclipse.gef.KeyStroke;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.gef.ui.actions.GEFActionConstants;
import org.eclipse.gef.ui.actions.ZoomInAction;
import org.eclipse.gef.ui.actions.ZoomOutAction;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.actions.ActionFactory;

/** Makes the actions of one editor and ties them to keys. */
public final class WallActions {
  /** Identifier of the action that shows the whole wall. */
  public static final String ZOOM_FIT = "muralbench.editor.zoomFit";

  static final Messages TEXTS = Messages.of(WallActions.class);
  private static final char DELETE = 127;

  private final ActionRegistry registry;

  /** Adds the actions of an editor to its registry. */
  public WallActions(IWorkbenchPart editor, ActionRegistry registry, WallView wall) {
    this.registry = registry;
    WallZoom zoom = wall.scene().zoom();
    registry.registerAction(new ZoomInAction(zoom));
    registry.registerAction(new ZoomOutAction(zoom));
    registry.registerAction(new ZoomFit(wall));
  }

  /** Ties the actions to keys while the wall has the focus. */
  public void addTo(GraphicalViewer viewer) {
    KeyHandler keys = new KeyHandler();
    keys.put(KeyStroke.getPressed(DELETE, DELETE, 0), action(ActionFactory.DELETE.getId()));
    put(keys, '0', ZOOM_FIT);
    put(keys, '=', GEFActionConstants.ZOOM_IN);
    put(keys, '+', GEFActionConstants.ZOOM_IN);
    put(keys, '-', GEFActionConstants.ZOOM_OUT);
    viewer.setKeyHandler(viewer.getKeyHandler().setParent(keys));
  }

  private void put(KeyHandler keys, char key, String action) {
    keys.put(KeyStroke.getPressed(key, key, SWT.MOD1), action(action));
  }

  private IAction action(String id) {
    return registry.getAction(id);
  }

  private static final class ZoomFit extends Action {
    private final WallView wall;

    ZoomFit(WallView wall) {
      super(TEXTS.text("zoomFit"));
      this.wall = wall;
      setId(ZOOM_FIT);
      setToolTipText(TEXTS.text("zoomFit.hint"));
    }

    @Override
    public void run() {
      wall.fit();
    }
  }
}
