// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.util.Locale;
import muralbench.base.Messages;

/** What a unit of a block is made of. */
public enum UnitKind {
  /** One square. */
  PLAIN,
  /** Two triangles along a diagonal. */
  HALF_SQUARE,
  /** Four triangles along both diagonals. */
  QUARTER_SQUARE,
  /** One triangle along a diagonal and two quarter triangles. */
  HALF_AND_QUARTERS,
  /** Strips side by side. */
  RAILS,
  /** A square on its corner within a square. */
  SQUARE_IN_SQUARE,
  /** A quarter circle about a corner. */
  QUARTER_CIRCLE,
  /** Over two units, a triangle between two half as large. */
  FLYING_GEESE,
  /** A polygon of its own, over any number of units. */
  SHAPE;

  /** The kind in plain words. */
  public String label() {
    return Messages.of(UnitKind.class).text("unit." + name().toLowerCase(Locale.ROOT));
  }
}
