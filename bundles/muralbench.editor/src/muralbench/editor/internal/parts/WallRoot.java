// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.Optional;
import java.util.function.Supplier;
import muralbench.editor.internal.geometry.Frame;
import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.ScalableFreeformLayeredPane;
import org.eclipse.draw2d.Viewport;
import org.eclipse.gef.editparts.ScalableFreeformRootEditPart;
import org.eclipse.gef.editparts.ZoomManager;

/**
 * The root of the wall: its scaled layers scale the graphics of the screen themselves, which can draw paths and
 * fractions of pixels, where the usual ones go through a wrapper that cannot.
 */
public final class WallRoot extends ScalableFreeformRootEditPart {
  private final WallZoom zoom;

  /** A root with a zoom of its own; {@code extent} is the part of the wall that is used. */
  public WallRoot(Supplier<Optional<Frame>> extent) {
    zoom = new WallZoom((ScalableFreeformLayeredPane) getScaledLayers(), (Viewport) getFigure(), extent);
  }

  @Override
  public ZoomManager getZoomManager() {
    return zoom;
  }

  /** The zoom of the wall. */
  public WallZoom zoom() {
    return zoom;
  }

  @Override
  protected ScalableFreeformLayeredPane createScaledLayers() {
    ScalableFreeformLayeredPane layers = new ScaledLayers();
    layers.add(getPrintableLayers(), PRINTABLE_LAYERS);
    FreeformLayer feedback = new FreeformLayer();
    feedback.setEnabled(false);
    layers.add(feedback, SCALED_FEEDBACK_LAYER);
    return layers;
  }

  private static final class ScaledLayers extends ScalableFreeformLayeredPane {
    @Override
    protected void paintClientArea(Graphics graphics) {
      if (getChildren().isEmpty()) {
        return;
      }
      graphics.pushState();
      graphics.scale(getScale());
      // Painting the children comes back to the state pushed last, which has to be the scaled one.
      graphics.pushState();
      paintChildren(graphics);
      graphics.popState();
      graphics.popState();
    }
  }
}
