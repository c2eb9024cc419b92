// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/**
 * What the end of a side leaves of its outer edge for the row of tiles.
 *
 * @param fixed what is taken away, mm; negative where the row runs on past the end of the side
 * @param joints how many joints lie between the end and the first tile; the mitre's joint is half a joint on the
 *     diagonal, which is a joint over the root of 2 along the edge
 */
record EndTake(double fixed, double joints) {
  private static final double HALF_MITRE = 1 / Math.sqrt(2);

  static EndTake of(Border border, int row, BandSide side, boolean start) {
    BandRow of = border.rows().get(row);
    BandEnd end = start ? side.start() : side.end();
    if (end == BandEnd.FREE) {
      return new EndTake(0, 0);
    }
    boolean convex = end == BandEnd.CONVEX;
    return switch (border.corner()) {
      case TILE, TURNED, MIRRORED -> new EndTake(convex ? of.cornerSize() : 0, 1);
      case MITRED -> new EndTake(convex ? 0 : -of.width(), HALF_MITRE);
      case BUTTED -> through(border.through(), side, start)
          ? new EndTake(convex ? 0 : -of.width(), 0)
          : new EndTake(convex ? of.width() : 0, 1);
    };
  }

  /** Whether a side runs through at one of its ends. */
  static boolean through(Through rule, BandSide side, boolean start) {
    return switch (rule) {
      case LEVEL -> side.quarters() % 2 == 0;
      case UPRIGHT -> side.quarters() % 2 == 1;
      case ROUND -> !start;
    };
  }

  EndTake plus(EndTake other) {
    return new EndTake(fixed + other.fixed, joints + other.joints);
  }
}
