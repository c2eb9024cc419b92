// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.field;

import java.util.List;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;
import muralbench.setout.geometry.Box;

/**
 * The screen as the painters see it: places on the wall in millimetres, lines and letters in whole pixels at any zoom.
 * It takes the zoom out of the graphics it is given, so that lines stay sharp and text keeps its size.
 */
public final class Paper {
  private static final double CHORD_PIXELS = 0.2;

  private final Graphics graphics;
  private final double scale;

  private Paper(Graphics graphics, double pixelsPerMillimetre) {
    this.graphics = graphics;
    this.scale = pixelsPerMillimetre;
  }

  /**
   * Paints on scaled graphics and leaves them as they were.
   *
   * @param zoom the scale the graphics have now, pixels for each drawing unit
   * @param pixelsPerMillimetre pixels for each millimetre
   */
  public static void paint(Graphics graphics, double zoom, double pixelsPerMillimetre, Painter painter) {
    graphics.pushState();
    try {
      graphics.scale(1 / zoom);
      painter.paint(new Paper(graphics, pixelsPerMillimetre));
    } finally {
      graphics.popState();
    }
  }

  /** Something that paints. */
  public interface Painter {
    /** Paints. */
    void paint(Paper paper);
  }

  /** The graphics underneath; their unit is the pixel. */
  public Graphics graphics() {
    return graphics;
  }

  /** Pixels for each millimetre. */
  public double scale() {
    return scale;
  }

  /** The pixel column of a place on the wall. */
  public int x(double millimetres) {
    return (int) Math.round(millimetres * scale);
  }

  /** The pixel row of a height on the wall. */
  public int y(double millimetres) {
    return (int) Math.round(-millimetres * scale);
  }

  /** The part of the wall that has to be painted. */
  public Box clip() {
    Rectangle clip = graphics.getClip(new Rectangle());
    return new Box(clip.x / scale, -clip.bottom() / scale, clip.right() / scale, -clip.y / scale);
  }

  /** Fills the area between contours, overlaps by the even-odd rule. */
  public void fill(List<Contour> contours) {
    Path path = new Path(Display.getCurrent());
    contours.forEach(contour -> add(path, contour.points(CHORD_PIXELS / scale)));
    graphics.fillPath(path);
    path.dispose();
  }

  /** Draws a contour. */
  public void draw(Contour contour) {
    Path path = new Path(Display.getCurrent());
    add(path, contour.points(CHORD_PIXELS / scale));
    graphics.drawPath(path);
    path.dispose();
  }

  /** Fills and draws a piece that is no upright rectangle. */
  public void fillAndDraw(PieceShape shape) {
    Path path = new Path(Display.getCurrent());
    add(path, shape.edge());
    shape.holes().forEach(hole -> add(path, hole));
    graphics.fillPath(path);
    graphics.drawPath(path);
    path.dispose();
  }

  private void add(Path path, List<Vec> points) {
    boolean first = true;
    for (Vec point : points) {
      float x = (float) (point.x() * scale);
      float y = (float) (-point.y() * scale);
      if (first) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
      first = false;
    }
    path.close();
  }
}
