// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import java.util.Optional;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.ModelCommand;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.geometry.FocalPoint;
import muralbench.editor.internal.parts.PanelPart;
import muralbench.editor.internal.parts.Scene;
import muralbench.model.BalancedOrigin;
import muralbench.model.FixedOrigin;
import muralbench.model.Panel;
import muralbench.setout.geometry.Vec;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.ContextMenuProvider;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.actions.ActionFactory;

/** The context menu of the wall; other plug-ins join it at the group {@code panel}. */
public final class WallMenu extends ContextMenuProvider {
  /** Identifier that menu contributions name. */
  public static final String ID = "muralbench.editor.wall";

  private static final Messages TEXTS = Messages.of(WallMenu.class);

  private final ActionRegistry actions;
  private final Scene scene;
  private Point pointed;

  /** A menu for a viewer whose control exists. */
  public WallMenu(EditPartViewer viewer, ActionRegistry actions, Scene scene) {
    super(viewer);
    this.actions = actions;
    this.scene = scene;
    viewer.getControl().addListener(SWT.MenuDetect, this::asked);
  }

  /** Notes where the menu was asked for; nowhere if that was done on the keyboard. */
  private void asked(Event event) {
    org.eclipse.swt.graphics.Point at = getViewer().getControl().toControl(event.x, event.y);
    pointed = event.detail == SWT.MENU_KEYBOARD ? null : new Point(at.x, at.y);
  }

  @Override
  public void buildContextMenu(IMenuManager menu) {
    menu.add(new GroupMarker("panel"));
    menu.add(new Separator("place"));
    if (pointed != null && getViewer().findObjectAt(pointed) instanceof PanelPart part) {
      focalPoint(menu, (Panel) part.thing());
    }
    menu.add(new Separator("edit"));
    for (ActionFactory action : new ActionFactory[] {ActionFactory.UNDO, ActionFactory.REDO, ActionFactory.DELETE}) {
      menu.add(actions.getAction(action.getId()));
    }
    menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
  }

  /** A panel that takes its start from another one has no focal point of its own. */
  private void focalPoint(IMenuManager menu, Panel panel) {
    if (panel.getOrigin() instanceof BalancedOrigin || panel.getOrigin() instanceof FixedOrigin) {
      Vec at = rounded(scene.zoom().wall(pointed));
      menu.add(action("focus.set", () -> change("focus.set.command", panel, () -> FocalPoint.set(panel, at))));
    }
    Optional<Vec> now = FocalPoint.of(panel);
    if (now.isPresent()) {
      menu.add(action("focus.clear", () -> change("focus.clear.command", panel, () -> FocalPoint.clear(panel))));
    }
  }

  private Vec rounded(Vec at) {
    LengthUnit unit = scene.mural().units();
    return new Vec(LengthText.rounded(at.x(), unit), LengthText.rounded(at.y(), unit));
  }

  private void change(String label, Panel panel, Runnable change) {
    OpenMural mural = scene.mural();
    mural.execute(ModelCommand.of(TEXTS.text(label, "panel", panel.getId()), mural.mural(), change));
  }

  private static IAction action(String key, Runnable run) {
    return new Action(TEXTS.text(key)) {
      @Override
      public void run() {
        run.run();
      }
    };
  }
}
