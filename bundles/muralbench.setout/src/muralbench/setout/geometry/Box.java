// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.Comparator;

/**
 * An upright rectangle that bounds something, mm.
 *
 * @param minX left edge
 * @param minY bottom edge
 * @param maxX right edge, at least {@code minX}
 * @param maxY top edge, at least {@code minY}
 */
public record Box(double minX, double minY, double maxX, double maxY) {
  /** Boxes by their left edges, then bottom, right and top edges. */
  public static final Comparator<Box> FROM_LEFT = Comparator.comparingDouble(Box::minX).thenComparingDouble(Box::minY)
      .thenComparingDouble(Box::maxX).thenComparingDouble(Box::maxY);

  /** The smallest box around two points. */
  public static Box of(Vec a, Vec b) {
    return new Box(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
  }

  /** The smallest box around this and {@code other}. */
  public Box and(Box other) {
    return new Box(Math.min(minX, other.minX), Math.min(minY, other.minY), Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /** The smallest box around this and a point. */
  public Box and(Vec point) {
    return and(new Box(point.x(), point.y(), point.x(), point.y()));
  }

  /** This box with every edge moved out by {@code margin} mm (in if negative). */
  public Box grown(double margin) {
    return new Box(minX - margin, minY - margin, maxX + margin, maxY + margin);
  }

  /** Width, mm. */
  public double width() {
    return maxX - minX;
  }

  /** Height, mm. */
  public double height() {
    return maxY - minY;
  }

  /** The middle. */
  public Vec centre() {
    return new Vec((minX + maxX) / 2, (minY + maxY) / 2);
  }

  /** Whether the two boxes share a point. */
  public boolean meets(Box other) {
    return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
  }

  /** Whether {@code other} lies in this box; the edges belong to it. */
  public boolean holds(Box other) {
    return minX <= other.minX && other.maxX <= maxX && minY <= other.minY && other.maxY <= maxY;
  }
}
