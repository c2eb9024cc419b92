// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.editor.internal.geometry.SnapLines;
import muralbench.editor.internal.geometry.Snapping;
import muralbench.editor.internal.parts.OpeningPart;
import muralbench.editor.internal.parts.Scene;
import muralbench.editor.internal.parts.ScenePart;
import muralbench.editor.internal.tools.PlaceTracker;
import muralbench.model.CircleOutline;
import muralbench.model.Panel;
import muralbench.setout.PanelSetOut;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.requests.ChangeBoundsRequest;

/**
 * Where a drag takes a thing, exactly in millimetres: the way of the pointer, snapped.
 *
 * @param from its frame before
 * @param to its frame if it were dropped now
 * @param guideX a line across x that it snapped to
 * @param guideY a line across y that it snapped to
 */
record Dragged(Frame from, Frame to, OptionalDouble guideX, OptionalDouble guideY) {
  /** What a request means for a part; none if the part's outline cannot be read. */
  static Optional<Dragged> of(ScenePart part, ChangeBoundsRequest request) {
    Optional<Frame> from = Placement.frame(part.thing());
    boolean resize = RequestConstants.REQ_RESIZE.equals(request.getType());
    return from.map(frame -> resize ? resized(part, frame, request) : moved(part, frame, request));
  }

  private static Dragged moved(ScenePart part, Frame from, ChangeBoundsRequest request) {
    List<EObject> things = things(request);
    Frame all = things.stream().flatMap(thing -> Placement.frame(thing).stream()).reduce(Frame::and).orElse(from);
    double scale = part.scene().pixelsPerMillimetre();
    double dx = request.getMoveDelta().x / scale;
    double dy = -request.getMoveDelta().y / scale;
    if (PlaceTracker.free(request)) {
      return new Dragged(from, from.moved(dx, dy), OptionalDouble.empty(), OptionalDouble.empty());
    }
    Snapping.Snapped snapped = snapping(part, things).move(all, dx, dy);
    Frame to = from.moved(snapped.frame().x() - all.x(), snapped.frame().y() - all.y());
    return new Dragged(from, to, snapped.x(), snapped.y());
  }

  private static Dragged resized(ScenePart part, Frame from, ChangeBoundsRequest request) {
    int direction = request.getResizeDirection();
    Snapping.Edges edges = new Snapping.Edges((direction & PositionConstants.WEST) != 0,
        (direction & PositionConstants.EAST) != 0, (direction & PositionConstants.SOUTH) != 0,
        (direction & PositionConstants.NORTH) != 0);
    double scale = part.scene().pixelsPerMillimetre();
    double dx = (edges.left() ? request.getMoveDelta().x : request.getSizeDelta().width) / scale;
    double dy = (edges.top() ? -request.getMoveDelta().y : -request.getSizeDelta().height) / scale;
    Snapping snapping = snapping(part, things(request));
    Snapping used = PlaceTracker.free(request) ? snapping.without() : snapping;
    Snapping.Snapped snapped = used.resize(from, edges, dx, dy);
    Frame to = Placement.outline(part.thing()) instanceof CircleOutline
        ? edges.square(snapped.frame()) : snapped.frame();
    return new Dragged(from, to, snapped.x(), snapped.y());
  }

  private static List<EObject> things(ChangeBoundsRequest request) {
    List<EObject> things = new ArrayList<>();
    for (Object part : request.getEditParts()) {
      things.add(((ScenePart) part).thing());
    }
    return things;
  }

  private static Snapping snapping(ScenePart part, List<EObject> things) {
    Scene scene = part.scene();
    Optional<PanelSetOut> setOut = part instanceof OpeningPart opening
        ? scene.mural().setOut((Panel) opening.panelPart().thing()) : Optional.empty();
    return SnapLines.around(scene.mural().mural(), things, setOut)
        .at(scene.pixelsPerMillimetre(), scene.mural().units());
  }
}
