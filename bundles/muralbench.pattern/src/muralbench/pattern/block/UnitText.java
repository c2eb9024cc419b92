// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import muralbench.pattern.symmetry.Rational;

/** Reads the word for one unit into its pieces; colours are letters. See {@link BlockText}. */
final class UnitText {
  private static final Rational HALF = Rational.of(1, 2);
  private static final Pattern LETTER = Pattern.compile("[A-Z]");
  private static final Pattern RAILS = Pattern.compile("[A-Z](?:[-|][A-Z])+");
  private static final Pattern DISC = Pattern.compile("(sw|se|ne|nw)\\(([A-Z])\\)([A-Z])");
  private static final Pattern DIAMOND = Pattern.compile("<([A-Z])>([A-Z])");
  private static final Pattern HALVES = Pattern.compile("([A-Z])([/\\\\])([A-Z])");
  private static final Pattern QUARTERS = Pattern.compile("([A-Z]):([A-Z]):([A-Z]):([A-Z])");
  private static final Pattern THREE = Pattern.compile("([A-Z])(?::([A-Z]))?([/\\\\])([A-Z])(?::([A-Z]))?");
  private static final List<String> DISC_CORNERS = List.of("sw", "se", "ne", "nw");

  /** A unit that was read: its kind and pieces with letters as colours. */
  record Unit(UnitKind kind, List<BlockPiece> pieces) {}

  private final Corner lowerLeft;
  private final Corner lowerRight;
  private final Corner upperRight;
  private final Corner upperLeft;
  private final Corner middle;
  private final Rational radius;

  /** Units at a column and a row, counted from 0 at the lower left; the radius is that of quarter circles. */
  UnitText(int column, int row, Rational radius) {
    lowerLeft = Corner.of(column, row);
    lowerRight = Corner.of(column + 1L, row);
    upperRight = Corner.of(column + 1L, row + 1L);
    upperLeft = Corner.of(column, row + 1L);
    middle = lowerLeft.plus(HALF, HALF);
    this.radius = radius;
  }

  /** The unit, or null if the word is none. */
  Unit read(String word) {
    if (LETTER.matcher(word).matches()) {
      return unit(UnitKind.PLAIN, List.of(piece(word, UnitKind.PLAIN, lowerLeft, lowerRight, upperRight, upperLeft)));
    }
    Matcher halves = HALVES.matcher(word);
    if (halves.matches()) {
      boolean rising = halves.group(2).equals("/");
      return unit(UnitKind.HALF_SQUARE, List.of(half(halves.group(1), UnitKind.HALF_SQUARE, rising, true),
          half(halves.group(3), UnitKind.HALF_SQUARE, rising, false)));
    }
    Matcher quarters = QUARTERS.matcher(word);
    if (quarters.matches()) {
      List<BlockPiece> pieces = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        pieces.add(quarter(quarters.group(i + 1), UnitKind.QUARTER_SQUARE, i));
      }
      return unit(UnitKind.QUARTER_SQUARE, pieces);
    }
    return more(word);
  }

  private Unit more(String word) {
    Matcher three = THREE.matcher(word);
    if (three.matches() && (three.group(2) == null) != (three.group(5) == null)) {
      return three(three);
    }
    if (RAILS.matcher(word).matches() && (word.indexOf('-') < 0 || word.indexOf('|') < 0)) {
      return rails(word);
    }
    Matcher diamond = DIAMOND.matcher(word);
    if (diamond.matches()) {
      return diamond(diamond.group(1), diamond.group(2));
    }
    Matcher disc = DISC.matcher(word);
    return disc.matches() ? disc(disc) : null;
  }

  private static Unit unit(UnitKind kind, List<BlockPiece> pieces) {
    return new Unit(kind, pieces);
  }

  private static BlockPiece piece(String colour, UnitKind kind, Corner... corners) {
    return BlockPiece.polygon(colour, kind, List.of(corners));
  }

  /** The half left or right of the rising or falling diagonal. */
  private BlockPiece half(String colour, UnitKind kind, boolean rising, boolean left) {
    if (rising) {
      return piece(colour, kind, lowerLeft, left ? upperLeft : lowerRight, upperRight);
    }
    return piece(colour, kind, upperLeft, left ? lowerLeft : upperRight, lowerRight);
  }

  /** The quarter triangle on a side: 0 top, 1 right, 2 bottom, 3 left. */
  private BlockPiece quarter(String colour, UnitKind kind, int side) {
    List<Corner> round = List.of(upperLeft, upperRight, lowerRight, lowerLeft);
    return piece(colour, kind, round.get(side % 4), round.get((side + 1) % 4), middle);
  }

  /** The divided half is left of the diagonal if the first colour has a second one. */
  private Unit three(Matcher three) {
    boolean rising = three.group(3).equals("/");
    boolean dividedLeft = three.group(2) != null;
    UnitKind kind = UnitKind.HALF_AND_QUARTERS;
    // Clockwise: left and top, right and bottom of a rising diagonal; bottom and left, top and right of a falling one.
    int first = rising ? (dividedLeft ? 3 : 1) : (dividedLeft ? 2 : 0);
    String one = dividedLeft ? three.group(1) : three.group(4);
    String other = dividedLeft ? three.group(2) : three.group(5);
    String whole = dividedLeft ? three.group(4) : three.group(1);
    return unit(kind, List.of(half(whole, kind, rising, !dividedLeft), quarter(one, kind, first),
        quarter(other, kind, first + 1)));
  }

  private Unit rails(String word) {
    boolean level = word.indexOf('-') >= 0;
    String[] colours = word.split("[-|]");
    List<BlockPiece> pieces = new ArrayList<>();
    for (int i = 0; i < colours.length; i++) {
      // Level rails are named from the top, upright ones from the left.
      int from = level ? colours.length - 1 - i : i;
      Rational start = Rational.of(from, colours.length);
      Rational end = Rational.of(from + 1L, colours.length);
      Rational none = Rational.ZERO;
      Corner a = level ? lowerLeft.plus(none, start) : lowerLeft.plus(start, none);
      Corner b = level ? lowerRight.plus(none, start) : lowerLeft.plus(end, none);
      Corner c = level ? lowerRight.plus(none, end) : upperLeft.plus(end, none);
      Corner d = level ? lowerLeft.plus(none, end) : upperLeft.plus(start, none);
      pieces.add(piece(colours[i], UnitKind.RAILS, a, b, c, d));
    }
    return unit(UnitKind.RAILS, pieces);
  }

  private Unit diamond(String inner, String outer) {
    UnitKind kind = UnitKind.SQUARE_IN_SQUARE;
    Corner bottom = lowerLeft.plus(HALF, Rational.ZERO);
    Corner top = upperLeft.plus(HALF, Rational.ZERO);
    Corner left = lowerLeft.plus(Rational.ZERO, HALF);
    Corner right = lowerRight.plus(Rational.ZERO, HALF);
    return unit(kind, List.of(piece(inner, kind, bottom, right, top, left), piece(outer, kind, lowerLeft, bottom, left),
        piece(outer, kind, lowerRight, right, bottom), piece(outer, kind, upperRight, top, right),
        piece(outer, kind, upperLeft, left, top)));
  }

  private Unit disc(Matcher disc) {
    int quadrant = DISC_CORNERS.indexOf(disc.group(1));
    Corner centre = List.of(lowerLeft, lowerRight, upperRight, upperLeft).get(quadrant);
    return unit(UnitKind.QUARTER_CIRCLE,
        List.of(BlockPiece.quarterDisc(disc.group(2), centre.point(), radius, quadrant),
            BlockPiece.besideDisc(disc.group(3), centre.point(), radius, quadrant)));
  }
}
