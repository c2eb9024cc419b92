// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.internal.field.PanelPicture;
import muralbench.editor.internal.field.PieceField;
import muralbench.editor.internal.geometry.FocalPoint;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.editor.internal.geometry.Placement;
import muralbench.editor.internal.geometry.WallPlane;
import muralbench.editor.internal.policies.CreatePolicy;
import muralbench.editor.internal.policies.DeletePolicy;
import muralbench.editor.internal.policies.PlacePolicy;
import muralbench.editor.internal.tools.PlaceTracker;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Contour;
import muralbench.setout.movement.MovementJoint;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;

/** A panel; its pieces have no parts of their own and are found through {@link #pieceAt}. */
public final class PanelPart extends ScenePart {
  private static final Frame NOWHERE = new Frame(0, 0, 1, 1);

  private final Panel panel;
  private final DragPreview drag;
  private PieceField field;

  /** A part of a scene. */
  public PanelPart(Scene scene, Panel panel) {
    super(scene, panel);
    this.panel = panel;
    this.drag = new DragPreview(scene, panel, this::field, this::refreshWithOpenings);
  }

  /** Shows the panel as it would become if it, or an opening in it, were put elsewhere, until that is taken back. */
  public void preview(EObject thing, Frame place) {
    drag.put(thing, place);
    refreshWithOpenings();
  }

  /** Takes a preview back. */
  public void endPreview(EObject thing) {
    if (drag.take(thing)) {
      refreshWithOpenings();
    }
  }

  /** The panel as it is shown: the one of the model, or the one of the preview. */
  Panel shown() {
    return drag.shown().map(Preview::panel).orElse(panel);
  }

  /** Refreshes the panel, then its openings, which lie in its figure. */
  void refreshWithOpenings() {
    refresh();
    for (Object child : getChildren()) {
      ((OpeningPart) child).refresh();
    }
  }

  /** Draws a clear line around pieces of the panel, given by their outlines, instead of around those before. */
  public void mark(List<Contour> pieces) {
    ((PanelFigure) getFigure()).mark(pieces);
  }

  /** The piece at a place on the wall. */
  public Optional<Piece> pieceAt(double x, double y) {
    return field().flatMap(pieces -> pieces.at(x, y));
  }

  /** The movement joint at a place on the wall, or no farther from it than {@code reach}, mm. */
  public Optional<MovementJoint> movementAt(double x, double y, double reach) {
    return field().flatMap(pieces -> pieces.movementAt(x, y, reach));
  }

  private Optional<PieceField> field() {
    Optional<PanelSetOut> now = scene().mural().setOut(panel);
    if (now.isEmpty()) {
      field = null;
    } else if (field == null || field.setOut() != now.get()) {
      field = new PieceField(now.get());
    }
    return Optional.ofNullable(field);
  }

  @Override
  protected void refreshVisuals() {
    Frame frame = Placement.frame(shown()).orElse(NOWHERE);
    String title = panel.getTitle() == null ? "" : panel.getTitle();
    ((PanelFigure) getFigure()).show(new PanelPicture(String.valueOf(panel.getId()), title, size(frame), frame,
        Outlines.contour(shown().getOutline()), shownField(), problem(),
        FocalPoint.of(shown())), openings());
  }

  private Optional<String> problem() {
    return drag.shown().isPresent() ? Optional.empty() : scene().mural().problem(panel).map(InputException::problem);
  }

  private Optional<PieceField> shownField() {
    return drag.shown().isPresent() ? drag.shown().get().field() : field().or(drag::dropped);
  }

  private Rectangle openings() {
    Rectangle all = WallPlane.rectangle(Placement.frame(shown()).orElse(NOWHERE));
    for (Opening opening : shown().getOpenings()) {
      Placement.frame(opening).ifPresent(frame -> all.union(WallPlane.rectangle(frame)));
    }
    return all;
  }

  private String size(Frame frame) {
    LengthUnit unit = scene().mural().units();
    return LengthText.shownInFeet(frame.width(), unit) + " × " + LengthText.shownInFeet(frame.height(), unit);
  }

  @Override
  protected List<Opening> getModelChildren() {
    return panel.getOpenings();
  }

  @Override
  protected IFigure createFigure() {
    return new PanelFigure(scene());
  }

  @Override
  protected void createEditPolicies() {
    installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new PlacePolicy());
    installEditPolicy(EditPolicy.COMPONENT_ROLE, new DeletePolicy(scene().mural().mural()));
    installEditPolicy(EditPolicy.LAYOUT_ROLE, new CreatePolicy());
  }

  @Override
  public DragTracker getDragTracker(Request request) {
    return new PlaceTracker(this);
  }
}
