// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.function.DoubleUnaryOperator;

/** Gauss-Legendre quadrature over 0 to 1. */
final class Quadrature {
  private static final double RELATIVE_ERROR = 1e-10;
  private static final int DEEPEST = 24;
  private static final double NODE = Math.sqrt(0.6) / 2;

  private Quadrature() {}

  /** Three points: exact for polynomials up to degree 5. */
  static double gauss3(DoubleUnaryOperator f) {
    return gauss3(f, 0, 1);
  }

  private static double gauss3(DoubleUnaryOperator f, double a, double b) {
    double middle = (a + b) / 2;
    double reach = (b - a) * NODE;
    double sides = f.applyAsDouble(middle - reach) + f.applyAsDouble(middle + reach);
    return (5 * sides + 8 * f.applyAsDouble(middle)) * (b - a) / 18;
  }

  /** The integral of a function that is at least 0, halving where three points do not yet agree. */
  static double integrate(DoubleUnaryOperator f) {
    double rough = gauss3(f, 0, 1);
    return refine(f, 0, 1, rough, RELATIVE_ERROR * Math.max(rough, Double.MIN_NORMAL), DEEPEST);
  }

  private static double refine(DoubleUnaryOperator f, double a, double b, double whole, double error, int depth) {
    double middle = (a + b) / 2;
    double left = gauss3(f, a, middle);
    double right = gauss3(f, middle, b);
    if (depth == 0 || Math.abs(left + right - whole) <= error) {
      return left + right;
    }
    return refine(f, a, middle, left, error / 2, depth - 1) + refine(f, middle, b, right, error / 2, depth - 1);
  }
}
