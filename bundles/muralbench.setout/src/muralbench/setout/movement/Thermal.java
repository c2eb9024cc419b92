// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

/** How far things grow and shrink with temperature, and how wide a sealed joint has to be for it. */
public final class Thermal {
  private Thermal() {}

  /**
   * How much a length changes, mm.
   *
   * @param coefficient coefficient of linear expansion, per °C
   * @param length mm
   * @param difference difference of temperature, °C
   */
  public static double growth(double coefficient, double length, double difference) {
    return coefficient * length * difference;
  }

  /**
   * The least width of a joint that takes up a movement, mm: movement x 100 / capability, the core of ASTM C1472
   * without its allowances for tolerances.
   *
   * @param movement mm
   * @param capability what the sealant can be stretched and pressed by, percent of its width, above 0; 25 asks for four
   *     times the movement
   */
  public static double sealantWidth(double movement, double capability) {
    if (!(capability > 0)) {
      throw new IllegalArgumentException("movement capability " + capability);
    }
    return Math.abs(movement) * 100 / capability;
  }

  /** A difference of temperature in °C. */
  public static double celsius(double fahrenheit) {
    return fahrenheit * 5 / 9;
  }
}
