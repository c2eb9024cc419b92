// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.List;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.editor.internal.geometry.Placement;
import muralbench.editor.internal.policies.DeletePolicy;
import muralbench.editor.internal.policies.PlacePolicy;
import muralbench.editor.internal.tools.PlaceTracker;
import muralbench.model.Opening;
import muralbench.model.Panel;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;

/** An opening in a panel. */
public final class OpeningPart extends ScenePart {
  private static final Frame NOWHERE = new Frame(0, 0, 1, 1);

  private final Opening opening;

  /** A part of a scene. */
  public OpeningPart(Scene scene, Opening opening) {
    super(scene, opening);
    this.opening = opening;
  }

  /** The part of its panel. */
  public PanelPart panelPart() {
    return (PanelPart) getParent();
  }

  private Opening shown() {
    int index = ((Panel) panelPart().thing()).getOpenings().indexOf(opening);
    return index < 0 ? opening : panelPart().shown().getOpenings().get(index);
  }

  @Override
  protected void refreshVisuals() {
    String kind = opening.getKind() == null ? "" : opening.getKind();
    ((OpeningFigure) getFigure()).show(Placement.frame(shown()).orElse(NOWHERE),
        Outlines.contour(shown().getOutline()),
        List.of(opening.getId() + " " + kind, String.valueOf(opening.getId())));
  }

  @Override
  protected IFigure createFigure() {
    return new OpeningFigure(scene());
  }

  @Override
  protected void createEditPolicies() {
    installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new PlacePolicy());
    installEditPolicy(EditPolicy.COMPONENT_ROLE, new DeletePolicy(scene().mural().mural()));
  }

  @Override
  public DragTracker getDragTracker(Request request) {
    return new PlaceTracker(this);
  }
}
