// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

/**
 * A size and weight of letters.
 *
 * @param height height of capitals and digits on paper, mm
 * @param bold whether the letters are bold
 * @param stretch width of the letters as a share of their usual width
 */
public record Type(double height, boolean bold, double stretch) {
  /** Regular letters whose capitals are {@code height} mm high. */
  public static Type plain(double height) {
    return new Type(height, false, 1);
  }

  /** Bold letters whose capitals are {@code height} mm high. */
  public static Type bold(double height) {
    return new Type(height, true, 1);
  }

  /** The same letters made narrower (below 1) or wider. */
  public Type stretched(double share) {
    return new Type(height, bold, share);
  }

  /** The distance from one line to the next, mm. */
  public double leading() {
    return height * 1.65;
  }
}
