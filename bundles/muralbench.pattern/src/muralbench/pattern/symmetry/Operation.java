// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

/**
 * One symmetry operation, exact, in the coordinates of a lattice: the point (x, y), measured along the two edges of the
 * unit cell with the edges as units, goes to (xx x + xy y + shiftX, yx x + yy y + shiftY).
 *
 * @param xx how much of x is in the new x
 * @param xy how much of y is in the new x
 * @param yx how much of x is in the new y
 * @param yy how much of y is in the new y
 * @param shiftX what is added to x, in edges of the cell
 * @param shiftY what is added to y, in edges of the cell
 */
public record Operation(int xx, int xy, int yx, int yy, Rational shiftX, Rational shiftY) {
  /** Everything stays. */
  public static final Operation NONE = new Operation(1, 0, 0, 1, Rational.ZERO, Rational.ZERO);

  /** The operation with one matrix and one shift. */
  public static Operation of(int xx, int xy, int yx, int yy, Rational shiftX, Rational shiftY) {
    return new Operation(xx, xy, yx, yy, shiftX, shiftY);
  }

  /** Only a shift. */
  public static Operation shift(Rational x, Rational y) {
    return new Operation(1, 0, 0, 1, x, y);
  }

  /**
   * Reads the coordinate triplet notation of the International Tables, such as {@code -x+1/2,y} or {@code -y,x-y}.
   *
   * @throws IllegalArgumentException if the text is not such a pair
   */
  public static Operation parse(String text) {
    String[] halves = text.split(",", -1);
    if (halves.length != 2) {
      throw new IllegalArgumentException(text);
    }
    Row x = Row.parse(halves[0]);
    Row y = Row.parse(halves[1]);
    return new Operation(x.ofX, x.ofY, y.ofX, y.ofY, x.shift, y.shift);
  }

  /** This operation followed by {@code next}. */
  public Operation then(Operation next) {
    return new Operation(next.xx * xx + next.xy * yx, next.xx * xy + next.xy * yy, next.yx * xx + next.yy * yx,
        next.yx * xy + next.yy * yy, next.mapX(shiftX, shiftY), next.mapY(shiftX, shiftY));
  }

  /** The new x of a point. */
  public Rational mapX(Rational x, Rational y) {
    return x.times(xx).plus(y.times(xy)).plus(shiftX);
  }

  /** The new y of a point. */
  public Rational mapY(Rational x, Rational y) {
    return x.times(yx).plus(y.times(yy)).plus(shiftY);
  }

  /** The operation that brings everything back. */
  public Operation inverse() {
    int sign = determinant();
    Operation turned = new Operation(sign * yy, -sign * xy, -sign * yx, sign * xx, Rational.ZERO, Rational.ZERO);
    return new Operation(turned.xx, turned.xy, turned.yx, turned.yy, turned.mapX(shiftX, shiftY).times(-1),
        turned.mapY(shiftX, shiftY).times(-1));
  }

  /** The same operation with its shift between 0 (included) and 1: one for all that differ by whole cells. */
  public Operation modulo() {
    return new Operation(xx, xy, yx, yy, shiftX.part(), shiftY.part());
  }

  /** The same operation with only the shift along x brought between 0 (included) and 1, for bands. */
  public Operation moduloX() {
    return new Operation(xx, xy, yx, yy, shiftX.part(), shiftY);
  }

  /** 1 for shifts and turns, -1 for mirrors and glides. */
  public int determinant() {
    return xx * yy - xy * yx;
  }

  /** Whether the operation turns a drawing into its mirror image. */
  public boolean mirrors() {
    return determinant() < 0;
  }

  /** How often the operation has to be repeated until its matrix does nothing: 1, 2, 3, 4 or 6. */
  public int order() {
    Operation linear = new Operation(xx, xy, yx, yy, Rational.ZERO, Rational.ZERO);
    Operation power = linear;
    for (int order = 1; order <= 6; order++) {
      if (power.equals(NONE)) {
        return order;
      }
      power = power.then(linear);
    }
    throw new ArithmeticException("no lattice has " + this);
  }

  /** The pair of coordinates as {@link #parse} reads it. */
  @Override
  public String toString() {
    return new Row(xx, xy, shiftX) + "," + new Row(yx, yy, shiftY);
  }

  private record Row(int ofX, int ofY, Rational shift) {
    static Row parse(String text) {
      int ofX = 0;
      int ofY = 0;
      Rational shift = Rational.ZERO;
      for (String term : text.replace(" ", "").replace("-", "+-").split("\\+")) {
        int sign = term.startsWith("-") ? -1 : 1;
        switch (term.replace("-", "")) {
          case "" -> { }
          case "x" -> ofX += sign;
          case "y" -> ofY += sign;
          default -> shift = shift.plus(Rational.parse(term));
        }
      }
      return new Row(ofX, ofY, shift);
    }

    @Override
    public String toString() {
      String text = term(ofX, "x") + term(ofY, "y");
      if (shift.sign() != 0) {
        text += (shift.sign() > 0 ? "+" : "") + shift;
      }
      text = text.startsWith("+") ? text.substring(1) : text;
      return text.isEmpty() ? "0" : text;
    }

    private static String term(int factor, String name) {
      String number = Math.abs(factor) == 1 ? "" : Integer.toString(Math.abs(factor));
      return factor == 0 ? "" : (factor < 0 ? "-" : "+") + number + name;
    }
  }
}
