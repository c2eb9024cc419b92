// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

/**
 * A size and weight of letters.
 *
 * @param height height of capitals and digits on paper, mm
 * @param bold whether the letters are bold
 */
public record Type(double height, boolean bold) {
  /** Regular letters whose capitals are {@code height} mm high. */
  public static Type plain(double height) {
    return new Type(height, false);
  }

  /** Bold letters whose capitals are {@code height} mm high. */
  public static Type bold(double height) {
    return new Type(height, true);
  }

  /** The distance from one line to the next, mm. */
  public double leading() {
    return height * 1.65;
  }
}
