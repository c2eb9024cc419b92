// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.policies;

import java.util.List;
import java.util.Optional;
import muralbench.editor.internal.commands.AddOpeningCommand;
import muralbench.editor.internal.commands.AddPanelCommand;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.editor.internal.geometry.SnapLines;
import muralbench.editor.internal.geometry.Snapping;
import muralbench.editor.internal.geometry.WallPlane;
import muralbench.editor.internal.palette.NewThing;
import muralbench.editor.internal.parts.Scene;
import muralbench.editor.internal.parts.ScenePart;
import muralbench.model.Mural;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.setout.PanelSetOut;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.RectangleFigure;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.GraphicalEditPolicy;
import org.eclipse.gef.requests.CreateRequest;

/** Takes what the palette makes: panels onto the wall, openings into panels. */
public final class CreatePolicy extends GraphicalEditPolicy {
  /** Drags shorter than this are clicks, pixels. */
  private static final int CLICK = 6;

  private IFigure feedback;

  @Override
  public EditPart getTargetEditPart(Request request) {
    return thing(request).isPresent() ? getHost() : null;
  }

  @Override
  public Command getCommand(Request request) {
    return thing(request).map(thing -> command(thing, (CreateRequest) request)).orElse(null);
  }

  /** What a request makes here: panels only on the wall, openings only in panels. */
  private Optional<NewThing> thing(Request request) {
    boolean here = RequestConstants.REQ_CREATE.equals(request.getType())
        && ((CreateRequest) request).getNewObject() instanceof NewThing;
    return here ? Optional.of((NewThing) ((CreateRequest) request).getNewObject()) : Optional.empty();
  }

  private Command command(NewThing thing, CreateRequest request) {
    ScenePart part = (ScenePart) getHost();
    Mural mural = part.scene().mural().mural();
    if (!thing.opening()) {
      return new AddPanelCommand(mural, frame(thing, request));
    }
    // The openings of a panel that repeats another are those of the other.
    return part.thing() instanceof Panel panel && !(panel.getOutline() instanceof RepeatedOutline)
        ? new AddOpeningCommand(mural, panel, thing.kind(), thing.outline(frame(thing, request))) : null;
  }

  private Frame frame(NewThing thing, CreateRequest request) {
    Scene scene = ((ScenePart) getHost()).scene();
    Point at = request.getLocation().getCopy();
    getHostFigure().translateToRelative(at);
    Snapping snapping = snapping(scene, thing);
    Dimension size = request.getSize();
    if (size == null || size.width < CLICK || size.height < CLICK) {
      Frame usual = thing.around(WallPlane.wallX(at.x), WallPlane.wallY(at.y));
      return inPanel(snapping.settle(usual).frame(), thing);
    }
    double scale = scene.pixelsPerMillimetre();
    double left = snapping.toLineOrGridX(WallPlane.wallX(at.x));
    double right = snapping.toLineOrGridX(WallPlane.wallX(at.x) + size.width / scale);
    double top = snapping.toLineOrGridY(WallPlane.wallY(at.y));
    double bottom = snapping.toLineOrGridY(WallPlane.wallY(at.y) - size.height / scale);
    return new Frame(left, bottom, Math.max(Snapping.SMALLEST, Frame.clean(right - left)),
        Math.max(Snapping.SMALLEST, Frame.clean(top - bottom)));
  }

  /** An opening of usual size is pushed into its panel where it fits there. */
  private Frame inPanel(Frame usual, NewThing thing) {
    Optional<Frame> panel = ((ScenePart) getHost()).thing() instanceof Panel host && thing.opening()
        ? Placement.frame(host) : Optional.empty();
    return panel.map(usual::pushedInto).orElse(usual);
  }

  private Snapping snapping(Scene scene, NewThing thing) {
    Optional<PanelSetOut> setOut = ((ScenePart) getHost()).thing() instanceof Panel panel && thing.opening()
        ? scene.mural().setOut(panel) : Optional.empty();
    List<Opening> openingsOnly = List.of();
    return SnapLines.around(scene.mural().mural(), openingsOnly, setOut)
        .at(scene.pixelsPerMillimetre(), scene.mural().units());
  }

  @Override
  public void showTargetFeedback(Request request) {
    thing(request).filter(thing -> ((CreateRequest) request).getSize() != null).ifPresent(thing -> {
      if (feedback == null) {
        feedback = new RectangleFigure();
        ((RectangleFigure) feedback).setFill(false);
        addFeedback(feedback);
      }
      Rectangle bounds = WallPlane.rectangle(frame(thing, (CreateRequest) request));
      getHostFigure().translateToAbsolute(bounds);
      getFeedbackLayer().translateToRelative(bounds);
      feedback.setBounds(bounds);
    });
  }

  @Override
  public void eraseTargetFeedback(Request request) {
    if (feedback != null) {
      removeFeedback(feedback);
      feedback = null;
    }
  }
}
