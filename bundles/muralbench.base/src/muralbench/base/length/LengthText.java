// SPDX-License-Identifier: EPL-2.0
package muralbench.base.length;

/** Reading and showing lengths. */
public final class LengthText {
  private LengthText() {}

  /**
   * Reads a length as a person types it: {@code 5 ft 3 1/2 in}, {@code 5' 3-1/2"}, {@code 63.5 in}, {@code 1/8},
   * {@code 1600 mm}, {@code 1.6 m}, {@code 160 cm}; a number without a unit is in {@code unit}. Free of any locale: the
   * decimal mark is a point.
   *
   * @return millimetres, finite; may be negative
   * @throws LengthFormatException if the text is no length
   */
  public static double parse(String text, LengthUnit unit) throws LengthFormatException {
    throw new UnsupportedOperationException();
  }

  /**
   * The length as text from which {@link #parse} gives back exactly the same double, with its unit; a fraction where
   * the length is a whole number of 64ths of an inch.
   */
  public static String exact(double millimetres, LengthUnit unit) {
    throw new UnsupportedOperationException();
  }

  /**
   * The length rounded for reading, to 1/16 in or 0.5 mm, with its unit: {@code 5-7/16 in}, {@code 63-1/2 in},
   * {@code 138.5 mm}.
   */
  public static String shown(double millimetres, LengthUnit unit) {
    throw new UnsupportedOperationException();
  }

  /** As {@link #shown}, with feet for a length of 24 in and more: {@code 5 ft 3-1/2 in}; metric as {@code shown}. */
  public static String shownInFeet(double millimetres, LengthUnit unit) {
    throw new UnsupportedOperationException();
  }

  /** The length rounded to the step of {@link #shown}: 1/16 in or 0.5 mm, half away from zero; millimetres. */
  public static double rounded(double millimetres, LengthUnit unit) {
    throw new UnsupportedOperationException();
  }
}
