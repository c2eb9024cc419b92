// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;

/**
 * Closes a band: finds the ways to lay it so that every side of every row is filled exactly, with one joint for the
 * whole band.
 *
 * <h2>What closes</h2>
 * A side of a row that shows a motif holds whole repeats; with a centre piece as many before it as after it. Cut ends
 * are equal: beside the cut tile there may be whole tiles of the neighbouring repeat, as many at either end, so that the
 * side is a window on the endless run with whole repeats in its middle. Sides of equal length, such as opposite ones of
 * a rectangle, get equal numbers. Every side is symmetric about its middle as far as its motif is. Plain rows hold whole
 * tiles, or whole tiles between two equal cut pieces, the largest there are; they do not count as harm.
 *
 * <h2>Least harm</h2>
 * A layout is judged by the worst that it needs, in the order of {@link Means}: joint other than
 * preferred, move, scale, centre piece, cut ends; that is the sum of their weights 1, 2, 4, 8, 16. Among equals by
 * the number of centre pieces and cut ends, sides of equal length counting once, then by how far the means go: the
 * mean of |joint - preferred| and |move| and |stretch| over the most that is permitted, of the centre piece's
 * distance from the middle of its range over half the range, and of what the cut takes off an end tile over its
 * length. The order is common practice: what is seen least comes first. Of the ways with the same pieces only those
 * are given that take the fewest means.
 *
 * <h2>Exactness</h2>
 * Closing is linear in joint, stretch and move for given numbers of tiles. All numbers of tiles
 * that the permitted ranges leave room for are tried and solved in closed form; lengths that differ by less than one
 * part in 1e9 of the side count as equal, and bounds hold to 1e-7 mm. {@link BandLayout#relativeResidual()} sums the
 * given numbers up exactly and stays below 1e-9.
 *
 * <h2>Half-tile rule</h2>
 * One whole tile less makes the two cut ends longer by half a module (tile + joint) each. So for a repeat of one tile
 * and any joint, one of two neighbouring numbers of tiles leaves ends of at least half a tile less half a joint: with a
 * permitted share of at most 1/2 - joint / (2 tile) a run of two tiles and more always closes with cut ends. With a
 * repeat of an even number of tiles only every other number leaves both ends alike: one step changes an end by a whole
 * module, so that a side may fall between; then a range of joints helps.
 */
public final class ClosingSolver {
  /** How many ways are shown. */
  static final int BEST = 3;

  private ClosingSolver() {}

  /**
   * The best ways to close a band, or what would work instead.
   *
   * @param units the units of lengths in texts
   * @throws InputException if the band is no band: a side shorter than its corners or than one repeat, an empty
   *     range, a length that is not above 0; the place is a JSON pointer from the band, such as {@code
   *     /rows/0/length}
   */
  public static Closing solve(Border border, LengthUnit units) throws InputException {
    BorderChecks.check(border, units);
    List<RunClass> classes = classes(border);
    List<BandLayout> layouts = layouts(border, classes);
    if (!layouts.isEmpty()) {
      return new Closing(layouts, "", List.of());
    }
    List<String> hints = new Hints(border, classes, units).texts();
    return new Closing(List.of(), BandWords.doesNotClose(border, hints, units), hints);
  }

  /** The classes of runs of the rows that show a motif. */
  static List<RunClass> classes(Border border) {
    List<RunClass> classes = new ArrayList<>();
    for (int row = 0; row < border.rows().size(); row++) {
      if (!border.rows().get(row).plain()) {
        classes.addAll(RunClass.of(border, row));
      }
    }
    return classes;
  }

  private static List<BandLayout> layouts(Border border, List<RunClass> classes) {
    if (classes.isEmpty()) {
      Found plain = new Found(0, 0, 0, List.of(), border.joint().preferred(), 1, 0);
      return Runs.possible(border, plain) ? List.of(BandLayout.of(border, plain, 0)) : List.of();
    }
    return new ClosingSearch(border, classes, BEST, ClosingSearch.Aim.ALL, found -> Runs.possible(border, found))
        .best().stream().map(found -> BandLayout.of(border, found, classes.size())).toList();
  }
}
