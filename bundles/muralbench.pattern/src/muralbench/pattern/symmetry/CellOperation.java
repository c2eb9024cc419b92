// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import muralbench.pattern.symmetry.SpectralMatch.Matrix;
import muralbench.setout.geometry.Vec;

/** An operation that was found: a matrix and a shift in coordinates of the smallest cell, the shift not exact. */
record CellOperation(Matrix matrix, Vec shift) {
  /** A shift this small is none, in edges of the cell. */
  private static final double NOTHING = 1e-3;

  boolean turns() {
    return matrix.determinant() > 0;
  }

  /** Whether the matrix, as a mirror, stands square to the lattice and not on a rhomb's diagonal. */
  boolean square() {
    return even(matrix.xx() - 1) && even(matrix.yy() - 1) && even(matrix.xy()) && even(matrix.yx());
  }

  private static boolean even(int x) {
    return x % 2 == 0;
  }

  /** For a mirror matrix: whether some whole shift makes the operation its own inverse, a mirror and not a glide. */
  boolean mirror() {
    for (int x = -2; x <= 2; x++) {
      for (int y = -2; y <= 2; y++) {
        Vec twice = shift.plus(new Vec(x, y));
        Vec image = image(twice);
        if (twice.plus(image).length() < NOTHING) {
          return true;
        }
      }
    }
    return false;
  }

  /** The image of a direction. */
  Vec image(Vec direction) {
    return new Vec(matrix.xx() * direction.x() + matrix.xy() * direction.y(),
        matrix.yx() * direction.x() + matrix.yy() * direction.y());
  }

  int order() {
    return Operation.of(matrix.xx(), matrix.xy(), matrix.yx(), matrix.yy(), Rational.ZERO, Rational.ZERO).order();
  }

  Isometry in(Cell cell) {
    return cell.isometry(matrix.xx(), matrix.xy(), matrix.yx(), matrix.yy(), cell.at(shift.x(), shift.y()));
  }
}
