// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.rulers;

import muralbench.editor.internal.field.Tint;
import muralbench.editor.internal.geometry.WallPlane;
import muralbench.editor.internal.parts.Scene;
import org.eclipse.draw2d.Viewport;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** A ruler along one side of the wall, with a mark at the pointer. */
final class Ruler extends Canvas {
  /** Breadth of a ruler, pixels. */
  static final int BREADTH = 22;

  private static final int SMALL_TICK = 5;

  private final Scene scene;
  private final Viewport viewport;
  private final boolean across;
  private int pointer = -1;

  /** A ruler; {@code across} for the one along x. */
  Ruler(Composite parent, Scene scene, Viewport viewport, boolean across) {
    super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
    this.scene = scene;
    this.viewport = viewport;
    this.across = across;
    addPaintListener(event -> paint(event.gc));
  }

  /** Moves the mark to a pixel of the wall's view; -1 takes it away. */
  void point(int pixel) {
    if (pixel != pointer) {
      int before = pointer;
      pointer = pixel;
      redraw(before);
      redraw(pixel);
    }
  }

  private void redraw(int pixel) {
    if (pixel >= 0) {
      redraw(across ? pixel - 1 : 0, across ? 0 : pixel - 1, across ? 3 : BREADTH, across ? BREADTH : 3, false);
    }
  }

  private void paint(GC gc) {
    Rectangle area = getClientArea();
    gc.setBackground(scene.style().of(Tint.WALL));
    gc.fillRectangle(area);
    gc.setForeground(scene.style().of(Tint.FAINT_INK));
    gc.setFont(scene.style().small());
    double scale = scene.pixelsPerMillimetre();
    int view = across ? viewport.getViewLocation().x : viewport.getViewLocation().y;
    int length = across ? area.width : area.height;
    double first = (across ? view : -(view + length)) / scale;
    for (Ticks.Tick tick : Ticks.between(first - 50 / scale, first + length / scale + 50 / scale, scale,
        scene.mural().units())) {
      double units = across ? WallPlane.UNITS * tick.at() : -WallPlane.UNITS * tick.at();
      mark(gc, (int) Math.round(units / WallPlane.UNITS * scale) - view, tick.label());
    }
    gc.setForeground(scene.style().of(Tint.CUT_EDGE));
    if (across) {
      gc.drawLine(0, BREADTH - 1, length, BREADTH - 1);
    } else {
      gc.drawLine(BREADTH - 1, 0, BREADTH - 1, length);
    }
    if (pointer >= 0) {
      gc.setBackground(scene.style().of(Tint.GUIDE));
      gc.fillRectangle(across ? pointer : 0, across ? 0 : pointer, across ? 1 : BREADTH, across ? BREADTH : 1);
    }
  }

  private void mark(GC gc, int pixel, String label) {
    int reach = label.isEmpty() ? SMALL_TICK : BREADTH;
    if (across) {
      gc.drawLine(pixel, BREADTH - reach, pixel, BREADTH);
      gc.drawString(label, pixel + 3, 0, true);
    } else {
      gc.drawLine(BREADTH - reach, pixel, BREADTH, pixel);
      if (!label.isEmpty()) {
        upright(gc, pixel, label);
      }
    }
  }

  /** Writes a label of the ruler along y from bottom to top. */
  private void upright(GC gc, int pixel, String label) {
    Point size = gc.stringExtent(label);
    Transform turn = new Transform(gc.getDevice());
    turn.translate(0, pixel - 3);
    turn.rotate(-90);
    gc.setTransform(turn);
    gc.drawString(label, 0, Math.max(0, (BREADTH - size.y) / 2 - 3), true);
    gc.setTransform(null);
    turn.dispose();
  }
}
