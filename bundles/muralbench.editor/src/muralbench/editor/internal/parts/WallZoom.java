// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.Optional;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.WallPlane;
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

  /** What is shown on its own should be at least so wide, pixels. */
  private static final double SMALL = 60;

  private static final double[] LEVELS = {0.01, 0.02, 0.03, 0.05, 0.075, 0.1, 0.15, 0.2, 0.3, 0.5, 0.75, 1, 1.5, 2, 3};

  /** Zoom of a pane seen through a viewport. */
  public WallZoom(ScalableFreeformLayeredPane pane, Viewport viewport) {
    super(pane, viewport);
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

  /** Shows a frame as large as fits, with a margin of so many pixels. */
  public void fit(Optional<Frame> frame, int margin) {
    Dimension room = getViewport().getClientArea().getSize();
    if (frame.isEmpty() || room.width <= 2 * margin || room.height <= 2 * margin) {
      return;
    }
    Rectangle units = WallPlane.rectangle(frame.get());
    setZoom(Math.min((room.width - 2.0 * margin) / units.width, (room.height - 2.0 * margin) / units.height));
    centre(units.getCenter());
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
