// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * The one place where millimetres of the wall (y up) become whole drawing units (y down) and back. A unit is a tenth of
 * a millimetre, fine enough for bounds; pieces are painted from their exact geometry.
 */
public final class WallPlane {
  /** Drawing units in a millimetre. */
  public static final int UNITS = 10;

  private WallPlane() {}

  /** The drawing units of a length, rounded. */
  public static int units(double millimetres) {
    return (int) Math.round(millimetres * UNITS);
  }

  /** The length of drawing units, mm. */
  public static double millimetres(double units) {
    return units / UNITS;
  }

  /** The smallest rectangle in drawing units that covers a frame. */
  public static Rectangle rectangle(Frame frame) {
    int left = (int) Math.floor(frame.x() * UNITS);
    int top = (int) Math.floor(-frame.top() * UNITS);
    int right = (int) Math.ceil(frame.right() * UNITS);
    int bottom = (int) Math.ceil(-frame.y() * UNITS);
    return new Rectangle(left, top, right - left, bottom - top);
  }

  /** The frame of a rectangle in drawing units. */
  public static Frame frame(Rectangle units) {
    return new Frame(wallX(units.x), wallY(units.bottom()), millimetres(units.width), millimetres(units.height));
  }

  /** The drawing point of a place on the wall. */
  public static Point point(double x, double y) {
    return new Point(units(x), -units(y));
  }

  /** The place on the wall of a drawing x, mm. */
  public static double wallX(double units) {
    return units / UNITS;
  }

  /** The place on the wall of a drawing y, mm above the floor. */
  public static double wallY(double units) {
    return -units / UNITS;
  }
}
