// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.List;
import java.util.Optional;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.editor.internal.policies.CreatePolicy;
import muralbench.model.Panel;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.ZoomListener;
import org.eclipse.gef.editpolicies.RootComponentEditPolicy;
import org.eclipse.gef.tools.MarqueeDragTracker;

/** The wall: the mural with its panels. It hears of all changes and has its children refresh themselves. */
public final class MuralPart extends ScenePart implements OpenMural.Listener {
  private final ZoomListener zoomed = zoom -> refreshAll();

  /** A part of a scene. */
  public MuralPart(Scene scene) {
    super(scene, scene.mural().mural());
  }

  @Override
  public void activate() {
    super.activate();
    scene().mural().addListener(this);
    scene().zoom().addZoomListener(zoomed);
  }

  @Override
  public void deactivate() {
    scene().mural().removeListener(this);
    scene().zoom().removeZoomListener(zoomed);
    super.deactivate();
  }

  @Override
  public void modelChanged(OpenMural mural) {
    refreshChildren();
    refreshAll();
  }

  @Override
  public void setOutChanged(OpenMural mural) {
    refreshAll();
  }

  private void refreshAll() {
    for (Object child : getChildren()) {
      ((PanelPart) child).refreshWithOpenings();
    }
  }

  /** The frame around all panels and the floor below them; none if there is no panel. */
  public static Optional<Frame> extent(OpenMural mural) {
    return mural.mural().getPanels().stream().flatMap(panel -> Placement.frame(panel).stream()).reduce(Frame::and)
        .map(frame -> frame.and(new Frame(frame.x(), 0, frame.width(), 1)));
  }

  @Override
  protected List<Panel> getModelChildren() {
    return scene().mural().mural().getPanels();
  }

  @Override
  protected IFigure createFigure() {
    return new WallFigure(scene());
  }

  @Override
  protected void createEditPolicies() {
    installEditPolicy(EditPolicy.COMPONENT_ROLE, new RootComponentEditPolicy());
    installEditPolicy(EditPolicy.LAYOUT_ROLE, new CreatePolicy());
  }

  @Override
  public DragTracker getDragTracker(Request request) {
    return new MarqueeDragTracker();
  }
}
