// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.tools;

import muralbench.editor.internal.parts.WallZoom;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** Wheel zoom at the pointer with the control key, and panning with the middle button. */
public final class WallGestures {
  /** Factor of one notch of the wheel. */
  private static final double NOTCH = 1.2;

  /** What the wheel counts for one notch. */
  private static final double COUNT = 3;

  private final FigureCanvas canvas;
  private final WallZoom zoom;
  private Point grabbed;

  private WallGestures(FigureCanvas canvas, WallZoom zoom) {
    this.canvas = canvas;
    this.zoom = zoom;
  }

  /** Listens on a canvas. */
  public static void on(FigureCanvas canvas, WallZoom zoom) {
    WallGestures gestures = new WallGestures(canvas, zoom);
    canvas.addListener(SWT.MouseVerticalWheel, gestures::wheel);
    canvas.addListener(SWT.MouseDown, gestures::grab);
    canvas.addListener(SWT.MouseMove, gestures::pull);
    canvas.addListener(SWT.MouseUp, gestures::release);
  }

  private void wheel(Event event) {
    if ((event.stateMask & SWT.MOD1) != 0) {
      event.doit = false;
      zoom.zoomAt(new Point(event.x, event.y), Math.pow(NOTCH, event.count / COUNT));
    }
  }

  private void grab(Event event) {
    if (event.button == 2) {
      grabbed = new Point(event.x, event.y);
      canvas.setCursor(canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND));
    }
  }

  private void pull(Event event) {
    if (grabbed != null) {
      Point view = canvas.getViewport().getViewLocation();
      canvas.scrollTo(view.x + grabbed.x - event.x, view.y + grabbed.y - event.y);
      grabbed = new Point(event.x, event.y);
    }
  }

  private void release(Event event) {
    if (event.button == 2 && grabbed != null) {
      grabbed = null;
      canvas.setCursor(null);
    }
  }
}
