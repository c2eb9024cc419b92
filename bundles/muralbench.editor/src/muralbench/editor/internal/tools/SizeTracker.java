// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.tools;

import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.tools.ResizeTracker;

/** Drags the edge or corner of a panel or opening. */
public final class SizeTracker extends ResizeTracker {
  /** A tracker for the edges given by a direction. */
  public SizeTracker(GraphicalEditPart owner, int direction) {
    super(owner, direction);
  }

  @Override
  protected void updateSourceRequest() {
    super.updateSourceRequest();
    PlaceTracker.mark(getSourceRequest(), getCurrentInput().isAltKeyDown());
  }
}
