// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import muralbench.setout.geometry.Box;

/**
 * The upright rectangle around something that can be moved and resized, mm, y up. Unlike a box it keeps width and
 * height as they are, so that a move never changes a size by a rounding.
 *
 * @param x left edge
 * @param y bottom edge
 * @param width above 0
 * @param height above 0
 */
public record Frame(double x, double y, double width, double height) {
  private static final double CLEAN = 1e6;

  /** The frame of a box. */
  public static Frame of(Box box) {
    return new Frame(box.minX(), box.minY(), clean(box.width()), clean(box.height()));
  }

  /** The nearest millionth of a millimetre: every 64th of an inch is one, the dust of sums is not. */
  public static double clean(double millimetres) {
    return Math.round(millimetres * CLEAN) / CLEAN;
  }

  /** Right edge. */
  public double right() {
    return clean(x + width);
  }

  /** Top edge. */
  public double top() {
    return clean(y + height);
  }

  /** Middle between the left and right edges. */
  public double middleX() {
    return x + width / 2;
  }

  /** Middle between the bottom and top edges. */
  public double middleY() {
    return y + height / 2;
  }

  /** The frame shifted. */
  public Frame moved(double dx, double dy) {
    return new Frame(clean(x + dx), clean(y + dy), width, height);
  }

  /** This frame moved by as little as puts it inside another; as it is in a direction in which it is too large. */
  public Frame pushedInto(Frame around) {
    double left = width > around.width ? x : Math.max(around.x, Math.min(x, around.right() - width));
    double bottom = height > around.height ? y : Math.max(around.y, Math.min(y, around.top() - height));
    return new Frame(clean(left), clean(bottom), width, height);
  }

  /** The frame with its left edge elsewhere, the right edge staying. */
  public Frame withLeft(double left) {
    return new Frame(left, y, clean(x + width - left), height);
  }

  /** The frame with its right edge elsewhere, the left edge staying. */
  public Frame withRight(double right) {
    return new Frame(x, y, clean(right - x), height);
  }

  /** The frame with its bottom edge elsewhere, the top edge staying. */
  public Frame withBottom(double bottom) {
    return new Frame(x, bottom, width, clean(y + height - bottom));
  }

  /** The frame with its top edge elsewhere, the bottom edge staying. */
  public Frame withTop(double top) {
    return new Frame(x, y, width, clean(top - y));
  }

  /** As a box. */
  public Box box() {
    return new Box(x, y, right(), top());
  }

  /** The smallest frame around this and another. */
  public Frame and(Frame other) {
    return of(box().and(other.box()));
  }

  /** Whether a point lies in the frame; its edges belong to it. */
  public boolean holds(double px, double py) {
    return px >= x && px <= right() && py >= y && py <= top();
  }

  /** Whether the other frame has the same size. */
  public boolean sameSize(Frame other) {
    return width == other.width && height == other.height;
  }
}
