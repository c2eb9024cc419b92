// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.zoom;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.handlers.HandlerUtil;

/** Zooms the wall of the active editor. */
public abstract class ZoomHandler extends AbstractHandler {
  @Override
  public final Object execute(ExecutionEvent event) {
    IEditorPart editor = HandlerUtil.getActiveEditor(event);
    ZoomManager zoom = editor == null ? null : editor.getAdapter(ZoomManager.class);
    if (zoom != null) {
      zoom(zoom);
    }
    return null;
  }

  /** Makes the change. */
  protected abstract void zoom(ZoomManager zoom);

  /** View > Zoom In. */
  public static final class In extends ZoomHandler {
    @Override
    protected void zoom(ZoomManager zoom) {
      zoom.zoomIn();
    }
  }

  /** View > Zoom Out. */
  public static final class Out extends ZoomHandler {
    @Override
    protected void zoom(ZoomManager zoom) {
      zoom.zoomOut();
    }
  }

  /** View > Zoom to Fit. */
  public static final class Fit extends ZoomHandler {
    @Override
    protected void zoom(ZoomManager zoom) {
      zoom.setZoomAsText(ZoomManager.FIT_ALL);
    }
  }
}
