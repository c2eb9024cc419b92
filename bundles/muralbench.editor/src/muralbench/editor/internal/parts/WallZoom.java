// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.Optional;
import java.util.function.Supplier;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.WallPlane;
import muralbench.setout.geometry.Vec;
import org.eclipse.draw2d.ScalableFreeformLayeredPane;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.editparts.ZoomManager;

/** Zoom over the range a wall needs, at the pointer and to fit. A zoom of 1 is 10 pixels to the millimetre. */
public final class WallZoom extends ZoomManager {
  /** Pixels to a millimetre at true size on a screen of 96 dots to the inch. */
  private static final double TRUE_SIZE = 96 / 25.4;

  /** Left free around what is fitted, pixels; a view with less room than that is not fitted. */
  public static final int MARGIN = 36;

  /** What is shown on its own should be at least so wide, pixels. */
  private static final double SMALL = 60;

  private static final double[] LEVELS = {0.01, 0.02, 0.03, 0.05, 0.075, 0.1, 0.15, 0.2, 0.3, 0.5, 0.75, 1, 1.5, 2, 3};

  private final Supplier<Optional<Frame>> extent;

  /** Zoom of a pane seen through a viewport; {@code extent} is what has to be seen when all is to be seen. */
  public WallZoom(ScalableFreeformLayeredPane pane, Viewport viewport, Supplier<Optional<Frame>> extent) {
    super(pane, viewport);
    this.extent = extent;
    double[] zooms = new double[LEVELS.length];
    for (int i = 0; i < zooms.length; i++) {
      zooms[i] = LEVELS[i] * TRUE_SIZE / WallPlane.UNITS;
    }
    setZoomLevels(zooms);
    setUIMultiplier(WallPlane.UNITS / TRUE_SIZE);
  }

  /** Changes the zoom by a factor so that the place under a point of the viewport stays there. */
  public void zoomAt(Point inViewport, double factor) {
    double before = getZoom();
    Point view = getViewport().getViewLocation();
    double x = (view.x + inViewport.x) / before;
    double y = (view.y + inViewport.y) / before;
    setZoom(before * factor);
    setViewLocation(new Point((int) Math.round(x * getZoom()) - inViewport.x,
        (int) Math.round(y * getZoom()) - inViewport.y));
  }

  /** The place on the wall under a point of the viewport, mm. */
  public Vec wall(Point inViewport) {
    Point view = getViewport().getViewLocation();
    return new Vec(WallPlane.wallX((view.x + inViewport.x) / getZoom()),
        WallPlane.wallY((view.y + inViewport.y) / getZoom()));
  }

  /** Shows the whole wall as large as fits. */
  public void fit() {
    extent.get().ifPresent(this::fit);
  }

  /** Shows a part of the wall as large as fits. */
  public void fit(Frame frame) {
    Dimension room = getViewport().getClientArea().getSize();
    if (room.width > 2 * MARGIN && room.height > 2 * MARGIN) {
      Rectangle units = WallPlane.rectangle(frame);
      setZoom(Math.min((room.width - 2.0 * MARGIN) / units.width, (room.height - 2.0 * MARGIN) / units.height));
      centre(units.getCenter());
    }
  }

  @Override
  public void setZoomAsText(String text) {
    if (FIT_ALL.equals(text)) {
      fit();
    } else {
      super.setZoomAsText(text);
    }
  }

  /** Brings a frame to the middle, nearer if it is small on the screen and farther if it does not fit. */
  public void show(Frame frame) {
    Dimension room = getViewport().getClientArea().getSize();
    Rectangle units = WallPlane.rectangle(frame);
    double fitting = Math.min(room.width / (double) units.width, room.height / (double) units.height);
    if (units.width * getZoom() < SMALL || getZoom() > fitting) {
      setZoom(Math.min(fitting / 2, Math.max(getZoom(), SMALL / units.width)));
    }
    centre(units.getCenter());
  }

  /** Brings a point in drawing units to the middle of the viewport. */
  public void centre(Point units) {
    Dimension room = getViewport().getClientArea().getSize();
    getViewport().validate();
    setViewLocation(new Point((int) Math.round(units.x * getZoom()) - room.width / 2,
        (int) Math.round(units.y * getZoom()) - room.height / 2));
  }
}
