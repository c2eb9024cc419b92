// SPDX-License-Identifier: EPL-2.0
package muralbench.base.length;

/** The units in which a person reads and types lengths; inside, every length is a double in millimetres. */
public enum LengthUnit {
  /** Inches, and feet and inches, with fractions. */
  INCH(25.4, "in"),
  /** Millimetres. */
  MILLIMETRE(1, "mm");

  private final double millimetres;
  private final String symbol;

  LengthUnit(double millimetres, String symbol) {
    this.millimetres = millimetres;
    this.symbol = symbol;
  }

  /** Millimetres in one of this unit, exact by definition (1 in = 25.4 mm). */
  public double millimetres() {
    return millimetres;
  }

  /** {@code in} or {@code mm}. */
  public String symbol() {
    return symbol;
  }
}
