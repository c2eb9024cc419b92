// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.internal.commands.PlaceCommand;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.parts.OpeningPart;
import muralbench.editor.internal.parts.PanelPart;
import muralbench.editor.internal.parts.Scene;
import muralbench.editor.internal.parts.ScenePart;
import muralbench.editor.internal.tools.PlaceTracker;
import muralbench.editor.internal.tools.SizeTracker;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.UnexecutableCommand;
import org.eclipse.gef.editpolicies.ResizableEditPolicy;
import org.eclipse.gef.handles.MoveHandle;
import org.eclipse.gef.handles.ResizeHandle;
import org.eclipse.gef.requests.ChangeBoundsRequest;

/**
 * Lets a panel or opening be moved and resized. While it is dragged the panel is shown as it would become, set out
 * anew, with the lines it snapped to and its measures in the status bar.
 */
public final class PlacePolicy extends ResizableEditPolicy {
  private static final Messages TEXTS = Messages.of(PlacePolicy.class);
  private static final int[] HANDLES = {PositionConstants.NORTH, PositionConstants.NORTH_EAST, PositionConstants.EAST,
      PositionConstants.SOUTH_EAST, PositionConstants.SOUTH, PositionConstants.SOUTH_WEST, PositionConstants.WEST,
      PositionConstants.NORTH_WEST};

  private final Guides guides = new Guides();

  private ScenePart part() {
    return (ScenePart) getHost();
  }

  private PanelPart panelPart() {
    return getHost() instanceof OpeningPart opening ? opening.panelPart() : (PanelPart) getHost();
  }

  @Override
  protected Command getMoveCommand(ChangeBoundsRequest request) {
    return command(request);
  }

  @Override
  protected Command getResizeCommand(ChangeBoundsRequest request) {
    return command(request);
  }

  private Command command(ChangeBoundsRequest request) {
    Optional<Dragged> dragged = Dragged.of(part(), request);
    return dragged.<Command>map(way -> new PlaceCommand(part().scene().mural().mural(),
        List.of(new PlaceCommand.Place(part().thing(), way.from(), way.to())))).orElse(UnexecutableCommand.INSTANCE);
  }

  @Override
  protected void showChangeBoundsFeedback(ChangeBoundsRequest request) {
    Dragged.of(part(), request).ifPresent(way -> {
      Scene scene = part().scene();
      panelPart().preview(part().thing(), way.to());
      guides.show(getFeedbackLayer(), getHostFigure(), way);
      scene.status().accept(measures(way.to(), scene.mural().units()));
    });
  }

  @Override
  protected void eraseChangeBoundsFeedback(ChangeBoundsRequest request) {
    panelPart().endPreview(part().thing());
    guides.erase();
    part().scene().status().accept("");
  }

  static String measures(Frame frame, LengthUnit unit) {
    return TEXTS.text("measures", "x", LengthText.shownInFeet(frame.x(), unit), "y",
        LengthText.shownInFeet(frame.y(), unit), "width", LengthText.shownInFeet(frame.width(), unit), "height",
        LengthText.shownInFeet(frame.height(), unit));
  }

  @Override
  protected List<Object> createSelectionHandles() {
    GraphicalEditPart host = (GraphicalEditPart) getHost();
    List<Object> handles = new ArrayList<>();
    MoveHandle frame = new MoveHandle(host);
    frame.setDragTracker(new PlaceTracker(host));
    handles.add(frame);
    for (int direction : HANDLES) {
      ResizeHandle handle = new ResizeHandle(host, direction);
      handle.setDragTracker(new SizeTracker(host, direction));
      handles.add(handle);
    }
    return handles;
  }
}
