// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import muralbench.setout.geometry.Vec;

/**
 * The cell of a repeat in the plane.
 *
 * @param a first edge, mm
 * @param b second edge, mm, counter-clockwise of the first
 */
public record Cell(Vec a, Vec b) {
  public Cell {
    if (!(a.cross(b) > 0)) {
      throw new IllegalArgumentException("the second edge of a cell lies counter-clockwise of the first");
    }
  }

  /** An upright rectangle. */
  public static Cell upright(double width, double height) {
    return new Cell(new Vec(width, 0), new Vec(0, height));
  }

  /** Equal edges at 120 degrees, the first level. */
  public static Cell hexagonal(double edge) {
    return new Cell(new Vec(edge, 0), new Vec(-edge / 2, edge * Math.sqrt(3) / 2));
  }

  /** Area, mm². */
  public double area() {
    return a.cross(b);
  }

  /** The point at the given fractions of the edges. */
  public Vec at(double x, double y) {
    return a.times(x).plus(b.times(y));
  }

  /** The fractions of the edges at which a point lies. */
  public Vec fractions(Vec point) {
    return new Vec(point.cross(b) / area(), a.cross(point) / area());
  }

  /** An operation of this lattice as a movement of the plane. */
  public Isometry isometry(Operation operation) {
    Vec shift = at(operation.shiftX().value(), operation.shiftY().value());
    return isometry(operation.xx(), operation.xy(), operation.yx(), operation.yy(), shift);
  }

  /** The movement with the given matrix in coordinates of the cell, followed by a shift in mm. */
  Isometry isometry(int xx, int xy, int yx, int yy, Vec shift) {
    Vec imageOfA = at(xx, yx);
    Vec imageOfB = at(xy, yy);
    // Columns of (images)(edges)^-1.
    double x1 = (imageOfA.x() * b.y() - imageOfB.x() * a.y()) / area();
    double x2 = (imageOfB.x() * a.x() - imageOfA.x() * b.x()) / area();
    double y1 = (imageOfA.y() * b.y() - imageOfB.y() * a.y()) / area();
    double y2 = (imageOfB.y() * a.x() - imageOfA.y() * b.x()) / area();
    return new Isometry(x1, x2, y1, y2, shift);
  }
}
