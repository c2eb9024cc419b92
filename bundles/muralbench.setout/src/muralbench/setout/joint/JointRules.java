// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.joint;

import muralbench.base.length.LengthUnit;
import muralbench.setout.PanelSpec;
import muralbench.setout.TileSpec;

/**
 * Which joints and which lippage the rules of the trade allow for a tile as it is laid. Lengths in millimetres.
 *
 * <ul>
 * <li>ANSI A108.02 §4.3.8: at least three times the spread of facial size in the delivered tile, never under 1/16 in.
 * <li>ANSI A108.02 §4.3.8.1: where courses are offset and a side is over 15 in, at least 1/8 in for rectified and 3/16 in
 * for calibrated tile, and the warpage of the longest edge on top. For natural tile, which is less true to size, it names
 * no width; that of calibrated tile is asked for. Where the class is not known, the least of these is.
 * <li>ANSI A108.02 §4.3.7: neighbouring edges differ in height by 1/32 in at most for joints from 1/16 to under 1/4 in and
 * by 1/16 in for wider ones, and the actual warpage of the tile on top.
 * <li>TCNA Handbook and ANSI A108.02: where the side being offset is over 15 in, courses are offset by 33 % at most. A
 * third counts as 33 %.
 * </ul>
 *
 * <p>All as quoted in the trade press.
 *
 * @param tile the tile
 * @param offset how far each course is shifted to the nearer side, as a share of the module, 0 to 1/2
 * @param shifted the side of the tile along which courses are shifted
 */
public record JointRules(TileSpec tile, double offset, double shifted) {
  /** No joint is under 1/16 in. */
  public static final double FLOOR = 1.5875;
  /** Wall grouts are made for joints of up to about 1/2 in: common practice. */
  public static final double MOST = 12.7;
  /** The largest offset of large tile, share of the module. */
  public static final double LARGE_OFFSET = 1.0 / 3;

  private static final double RECTIFIED = 3.175;
  private static final double CALIBRATED = 4.7625;
  private static final double SPREADS = 3;
  private static final double WIDE_JOINT = 6.35;
  private static final double LIPPAGE = 0.79375;
  private static final double WIDE_LIPPAGE = 1.5875;
  private static final double INCH_STEP = 0.79375;
  private static final double METRIC_STEP = 0.5;
  /**
   * Sides over 15 in come under the rules for offset courses. The rules speak of nominal size; work size is not
   * larger than that, and a nominal 16 in tile is well over 15 in, so work size decides the same.
   */
  private static final double LARGE = 381;
  private static final double ROUNDING = 1e-6;
  private static final double SAME_SHARE = 1e-9;

  /** The rules for a panel. */
  public static JointRules of(PanelSpec panel) {
    boolean vertical = panel.bond().settings().getOrDefault("courses", "").equals("vertical");
    return new JointRules(panel.tile(), nearer(panel.bond().offset()),
        vertical ? panel.tile().height() : panel.tile().width());
  }

  /** The rules for a tile that is laid joint over joint. */
  public static JointRules of(TileSpec tile) {
    return new JointRules(tile, 0, tile.width());
  }

  private static double nearer(double offset) {
    double share = offset - Math.floor(offset);
    double nearer = Math.min(share, 1 - share);
    return nearer < SAME_SHARE ? 0 : nearer;
  }

  /** The narrowest joint that the spread of facial size allows; the floor where the spread is not known. */
  public double leastForSpread() {
    return Math.max(FLOOR, SPREADS * tile.facialVariation());
  }

  /** Whether the rule for large tile in offset courses holds. */
  public boolean isLargeAndOffset() {
    return offset > 0 && Math.max(tile.width(), tile.height()) > LARGE + ROUNDING;
  }

  /** The narrowest joint that large tile in offset courses allows; 0 where that rule does not hold. */
  public double leastForOffset() {
    return isLargeAndOffset() ? classLeast() + warpage() : 0;
  }

  /** The narrowest joint that all rules allow, as far as the tile is known. */
  public double least() {
    return Math.max(leastForSpread(), leastForOffset());
  }

  /** The widest joint by common practice. */
  public double most() {
    return Math.max(MOST, least());
  }

  /**
   * The joint to propose: what the rules and the practice for the class allow, rounded up to 1/32 in or 0.5 mm; 1/8 in is
   * the practice for rectified, 3/16 in for calibrated tile, by a trade letter.
   */
  public double usual(LengthUnit units) {
    double wanted = Math.max(least(), classLeast());
    double step = units == LengthUnit.INCH ? INCH_STEP : METRIC_STEP;
    return Math.ceil((wanted - ROUNDING) / step) * step;
  }

  /** The least joint that practice gives the class of the tile; where it is not known, that of rectified tile. */
  public double classLeast() {
    return switch (tile.tileClass()) {
      case "calibrated", "natural" -> CALIBRATED;
      default -> RECTIFIED;
    };
  }

  /** Whether the class of the tile is known. */
  public boolean classKnown() {
    return !tile.tileClass().equals(TileSpec.NOT_KNOWN);
  }

  /** Whether the warpage of the tile is known. */
  public boolean warpageKnown() {
    return tile.warpage() >= 0;
  }

  /** How far neighbouring edges may differ in height with a joint, without what the warpage of the tile adds. */
  public static double lippageOfFlatTile(double joint) {
    return joint >= WIDE_JOINT - ROUNDING ? WIDE_LIPPAGE : LIPPAGE;
  }

  /** How far neighbouring edges may differ in height with a joint; as of flat tile where the warpage is not known. */
  public double lippage(double joint) {
    return lippageOfFlatTile(joint) + warpage();
  }

  /** Whether the courses are offset by more than large tile allows. */
  public boolean isOffsetTooFar() {
    return shifted > LARGE + ROUNDING && offset > LARGE_OFFSET + ROUNDING;
  }

  private double warpage() {
    return Math.max(0, tile.warpage());
  }
}
