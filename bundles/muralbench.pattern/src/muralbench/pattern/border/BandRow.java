// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/**
 * One row of tiles of a band. A <em>plain</em> row, such as a listel with no drawing, may be cut at both ends of a
 * side, since no motif is broken there (common practice); it always follows the other rows. A row that is not plain
 * is laid in whole repeats, see {@link ClosingSolver}.
 *
 * @param length of a tile along the run, mm, above 0
 * @param width of the row, mm, above 0
 * @param cornerSize side of the square corner tile, mm, at least {@code width}; more than that only in the innermost
 *     row
 * @param repeat how many tiles one repeat of the sequence takes, 1 or more
 * @param plain whether the row shows no motif
 */
public record BandRow(double length, double width, double cornerSize, int repeat, boolean plain) {
  /** A row with a motif and a corner as large as the row is wide. */
  public static BandRow of(double length, double width, int repeat) {
    return new BandRow(length, width, width, repeat, false);
  }

  /** A plain row, such as a listel. */
  public static BandRow plain(double length, double width) {
    return new BandRow(length, width, width, 1, true);
  }

  /** The same row with another corner tile. */
  public BandRow corner(double size) {
    return new BandRow(length, width, size, repeat, plain);
  }
}
