// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.rulers;

import java.beans.PropertyChangeListener;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.field.Tint;
import muralbench.editor.internal.parts.Scene;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Viewport;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** Lays the rulers around the canvas of the wall and keeps them in step with scrolling, zoom and pointer. */
public final class RuledWall {
  private final Composite frame;
  private Ruler across;
  private Ruler up;

  /** A frame; the canvas is made in {@link #frame()}, then {@link #rule} adds the rulers. */
  public RuledWall(Composite parent) {
    frame = new Composite(parent, SWT.NONE);
    GridLayout layout = new GridLayout(2, false);
    layout.marginWidth = 0;
    layout.marginHeight = 0;
    layout.horizontalSpacing = 0;
    layout.verticalSpacing = 0;
    frame.setLayout(layout);
  }

  /** The control that holds canvas and rulers. */
  public Composite frame() {
    return frame;
  }

  /** Adds the rulers to the canvas that was made in the frame. */
  public void rule(FigureCanvas canvas, Scene scene) {
    Canvas corner = new Canvas(frame, SWT.NONE);
    corner.setBackground(scene.style().of(Tint.WALL));
    across = new Ruler(frame, scene, canvas.getViewport(), true);
    up = new Ruler(frame, scene, canvas.getViewport(), false);
    corner.setLayoutData(breadth(Ruler.BREADTH, Ruler.BREADTH));
    across.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    ((GridData) across.getLayoutData()).heightHint = Ruler.BREADTH;
    up.setLayoutData(new GridData(SWT.CENTER, SWT.FILL, false, true));
    ((GridData) up.getLayoutData()).widthHint = Ruler.BREADTH;
    canvas.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    corner.moveAbove(null);
    across.moveBelow(corner);
    up.moveBelow(across);
    follow(canvas, scene);
  }

  private static GridData breadth(int width, int height) {
    GridData data = new GridData();
    data.widthHint = width;
    data.heightHint = height;
    return data;
  }

  private void follow(FigureCanvas canvas, Scene scene) {
    Viewport viewport = canvas.getViewport();
    PropertyChangeListener moved = event -> redraw();
    viewport.getHorizontalRangeModel().addPropertyChangeListener(moved);
    viewport.getVerticalRangeModel().addPropertyChangeListener(moved);
    scene.zoom().addZoomListener(zoom -> redraw());
    scene.mural().addListener(new OpenMural.Listener() {
      @Override
      public void modelChanged(OpenMural mural) {
        redraw();
      }
    });
    canvas.addMouseMoveListener(this::point);
    canvas.addListener(SWT.MouseExit, event -> {
      across.point(-1);
      up.point(-1);
    });
  }

  private void point(MouseEvent event) {
    across.point(event.x);
    up.point(event.y);
  }

  private void redraw() {
    if (!across.isDisposed()) {
      across.redraw();
      up.redraw();
    }
  }
}
