// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

/**
 * A symbol of Conway's orbifold notation. Its cost tells what kind of pattern it belongs to: exactly 2 for bands and
 * for patterns that fill the plane. Source: J. H. Conway, H. Burgiel, C. Goodman-Strauss, The Symmetries of Things,
 * A K Peters 2008, the Magic Theorem.
 *
 * @param symbol the symbol with the signs o, *, \u00d7, \u221e and digits
 */
public record Orbifold(String symbol) {
  /** The sign for a point that is turned about endlessly often: the two ends of a band. */
  public static final char ENDLESS = '\u221e';
  /** The sign for a glide that no mirror explains. */
  public static final char CROSS = '\u00d7';

  /**
   * What the symbol costs: o 2; \u00d7 and * 1 each; a digit n before the star (n-1)/n, after it half of that; \u221e
   * before the star 1, after it 1/2.
   *
   * @throws IllegalArgumentException for a sign that is none of the notation
   */
  public Rational cost() {
    Rational cost = Rational.ZERO;
    boolean mirrored = false;
    for (char sign : symbol.toCharArray()) {
      mirrored |= sign == '*';
      cost = cost.plus(cost(sign, mirrored));
    }
    return cost;
  }

  private static Rational cost(char sign, boolean mirrored) {
    int half = mirrored ? 2 : 1;
    if (sign >= '2' && sign <= '9') {
      int order = sign - '0';
      return Rational.of(order - 1, (long) order * half);
    }
    return switch (sign) {
      case 'o' -> Rational.of(2);
      case '*', CROSS -> Rational.ONE;
      case ENDLESS -> Rational.of(1, half);
      default -> throw new IllegalArgumentException("no sign of the notation: " + sign);
    };
  }

  /** The symbol for keyboards: x for \u00d7 and i for \u221e. */
  public String typed() {
    return symbol.replace(CROSS, 'x').replace(ENDLESS, 'i');
  }
}
