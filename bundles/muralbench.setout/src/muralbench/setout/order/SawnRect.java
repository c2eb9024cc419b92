// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.FaceSide;

/**
 * The rectangle around a cut piece that is to be sawn from a tile, glazed face up.
 *
 * @param width mm
 * @param height mm
 * @param factory the sides that have to lie on a factory edge, one bit each by {@link FaceSide#ordinal}
 */
record SawnRect(double width, double height, int factory) {
  /** Lengths that differ by less are the same, mm. */
  static final double SAME = 1e-6;

  static final int BOTTOM = 1 << FaceSide.BOTTOM.ordinal();
  static final int RIGHT = 1 << FaceSide.RIGHT.ordinal();
  static final int TOP = 1 << FaceSide.TOP.ordinal();
  static final int LEFT = 1 << FaceSide.LEFT.ordinal();
  private static final int QUARTERS = 4;
  private static final int ALL = 15;

  /** This rectangle turned a quarter counter-clockwise: the lower side becomes the right one. */
  SawnRect turned() {
    return new SawnRect(height, width, (factory << 1 | factory >> QUARTERS - 1) & ALL);
  }

  /**
   * The different ways, by quarter turns, in which it can be sawn from a tile: not where it is too large, and not where
   * two opposite sides need factory edges that are farther apart.
   */
  List<Integer> quarters(double tileWidth, double tileHeight) {
    List<Integer> ways = new ArrayList<>();
    List<SawnRect> seen = new ArrayList<>();
    SawnRect turned = this;
    for (int quarter = 0; quarter < QUARTERS; quarter++) {
      if (turned.fits(tileWidth, tileHeight) && !seen.contains(turned)) {
        ways.add(quarter);
        seen.add(turned);
      }
      turned = turned.turned();
    }
    return ways;
  }

  /** This rectangle after some quarter turns. */
  SawnRect turned(int quarters) {
    SawnRect turned = this;
    for (int quarter = 0; quarter < quarters; quarter++) {
      turned = turned.turned();
    }
    return turned;
  }

  boolean needs(int sides) {
    return (factory & sides) == sides;
  }

  private boolean fits(double tileWidth, double tileHeight) {
    return width <= tileWidth + SAME && height <= tileHeight + SAME
        && (!needs(LEFT | RIGHT) || width >= tileWidth - SAME)
        && (!needs(BOTTOM | TOP) || height >= tileHeight - SAME);
  }
}
