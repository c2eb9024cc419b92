// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.tools;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.tools.DragEditPartsTracker;

/** Drags panels and openings over the wall; what they are dragged over makes no difference. */
public final class PlaceTracker extends DragEditPartsTracker {
  /** Set in the data of a request while the person holds the key that switches snapping off. */
  public static final String FREE = "muralbench.free";

  /** A tracker that starts at a part. */
  public PlaceTracker(EditPart source) {
    super(source);
  }

  @Override
  protected boolean isMove() {
    return true;
  }

  @Override
  protected boolean isCloneActive() {
    return false;
  }

  @Override
  protected void updateTargetRequest() {
    super.updateTargetRequest();
    mark(getTargetRequest(), getCurrentInput().isAltKeyDown());
  }

  /** Notes in a request whether snapping is off. */
  @SuppressWarnings("unchecked")
  static void mark(Request request, boolean free) {
    request.getExtendedData().put(FREE, free);
  }

  /** Whether snapping is off for a request. */
  public static boolean free(Request request) {
    return Boolean.TRUE.equals(request.getExtendedData().get(FREE));
  }
}
