// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

/**
 * How far apart movement joints may be and how wide they have to be: TCNA Handbook EJ171 as published. Where the text
 * is silent the wider joint is taken: over 8 ft the width for 12 ft, a whole step for every started 15 °F.
 *
 * <p>EJ171 gives 8 to 12 ft outdoors and where it is wet or sunny, 20 to 25 ft elsewhere indoors; outdoors 3/8 in at
 * 8 ft and 1/2 in at 12 ft, and 1/16 in more for each 15 °F by which the surface of the tile swings over 100 °F between
 * summer and winter. Indoors on walls joints are never under 1/8 in and better 1/4 in; on floors as wide as the joint
 * and at least 1/4 in.
 *
 * @param greatestSpacing mm between middles of movement joints, or from the middle of one to the edge of the tile
 * @param exterior whether the widths for outdoors hold
 * @param floor whether the widths for floors hold
 */
public record MovementRule(double greatestSpacing, boolean exterior, boolean floor) {
  /** The swing of temperature up to which no joint has to be wider for it, °F. */
  public static final double PLAIN_SWING = 100;

  private static final double INCH = 25.4;
  private static final double FOOT = 12 * INCH;
  private static final double WIDE_SPACING = 25 * FOOT;
  private static final double CLOSE_SPACING = 12 * FOOT;
  private static final double NARROW_UP_TO = 8 * FOOT;
  private static final double SWING_STEP = 15;
  private static final double ROUNDING = 1e-6;

  /**
   * The rule for an exposure.
   *
   * @param exposure {@code interior-dry}, {@code interior-wet}, {@code exterior} or {@code exterior-frost}
   * @param surface {@code wall} or {@code floor}
   */
  public static MovementRule of(String exposure, String surface) {
    boolean dry = exposure.equals("interior-dry");
    return new MovementRule(dry ? WIDE_SPACING : CLOSE_SPACING, exposure.startsWith("exterior"),
        surface.equals("floor"));
  }

  /**
   * The least width of a movement joint, mm.
   *
   * @param bay greatest distance between movement joints, mm
   * @param swing how far the temperature of the tile's surface swings in a year, °F; counts outdoors only
   * @param joint width of the other joints, mm
   */
  public double leastWidth(double bay, double swing, double joint) {
    if (!exterior) {
      return floor ? Math.max(joint, INCH / 4) : INCH / 8;
    }
    double steps = Math.max(0, Math.ceil((swing - PLAIN_SWING - ROUNDING) / SWING_STEP));
    double plain = bay > NARROW_UP_TO + ROUNDING ? INCH / 2 : INCH * 3 / 8;
    return plain + steps * INCH / 16;
  }

  /** The width to plan with, mm: the {@link #leastWidth}, indoors the better 1/4 in, never narrower than the joint. */
  public double width(double bay, double swing, double joint) {
    return Math.max(joint, Math.max(leastWidth(bay, swing, joint), INCH / 4));
  }

  /** The fewest movement joints over a length, mm; none if the length is just the greatest spacing. */
  public int fewest(double length) {
    return Math.max(0, (int) Math.ceil((length - ROUNDING) / greatestSpacing) - 1);
  }
}
