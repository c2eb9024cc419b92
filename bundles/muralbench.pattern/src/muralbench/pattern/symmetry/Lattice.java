// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import java.util.List;

/** The five shapes of a plane lattice, by their conventional cells. */
public enum Lattice {
  /** Any two edges. */
  OBLIQUE,
  /** Edges at a right angle. */
  RECTANGULAR,
  /** Edges at a right angle and a lattice point in the middle of the cell; rhombs, seen from corner to middle. */
  RHOMBIC,
  /** Equal edges at a right angle. */
  SQUARE,
  /** Equal edges at 120 degrees. */
  HEXAGONAL;

  private static final double SAME = 1e-9;

  /** The lattice points of one cell as shifts, the corner first. */
  public List<Operation> centrings() {
    Rational half = Rational.of(1, 2);
    return this == RHOMBIC ? List.of(Operation.NONE, Operation.shift(half, half)) : List.of(Operation.NONE);
  }

  /** A cell of this shape; squares and hexagons take the width alone. */
  public Cell cell(double width, double height) {
    return switch (this) {
      case SQUARE -> Cell.upright(width, width);
      case HEXAGONAL -> Cell.hexagonal(width);
      default -> Cell.upright(width, height);
    };
  }

  /** Whether a cell has this shape. */
  public boolean admits(Cell cell) {
    double along = cell.a().length();
    double aside = cell.b().length();
    double lean = cell.a().dot(cell.b()) / (along * aside);
    boolean equal = Math.abs(along - aside) <= SAME * along;
    boolean upright = Math.abs(lean) <= SAME;
    return switch (this) {
      case OBLIQUE -> true;
      case RECTANGULAR, RHOMBIC -> upright;
      case SQUARE -> upright && equal;
      case HEXAGONAL -> equal && Math.abs(lean + 0.5) <= SAME;
    };
  }
}
