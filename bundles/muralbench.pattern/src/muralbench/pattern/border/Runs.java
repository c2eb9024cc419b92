// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.Arrays;
import java.util.List;

/** The numbers of every side of every row, from what the search found for the rows that show a motif. */
final class Runs {
  /** A plain tile that lacks no more than this is whole, mm. */
  private static final double WHOLE = 1e-6;

  private final Border border;
  private final Found found;
  private final RunLayout[] runs;

  private Runs(Border border, Found found) {
    this.border = border;
    this.found = found;
    runs = new RunLayout[border.rows().size() * border.path().sides().size()];
  }

  /** Whether the way can be laid: the band has room and every plain row fits at least one piece. */
  static boolean possible(Border border, Found found) {
    double depth = found.move() + border.before(border.rows().size()) + border.rows().size() * found.joint();
    return border.path().holds(depth) && of(border, found).stream().allMatch(run -> run != null);
  }

  /** The runs row by row; null where a plain run has no room for a piece. */
  static List<RunLayout> of(Border border, Found found) {
    Runs runs = new Runs(border, found);
    for (Choice choice : found.choices()) {
      runs.painted(choice);
    }
    for (int row = 0; row < border.rows().size(); row++) {
      if (border.rows().get(row).plain()) {
        RunClass.of(border, row).forEach(runs::plain);
      }
    }
    return Arrays.asList(runs.runs);
  }

  private void painted(Choice choice) {
    RunClass run = choice.run();
    double tile = run.tile() * found.scale();
    double rest = choice.rest(found.joint(), tile, found.move());
    Permits permits = border.permits();
    double end = 0;
    double centre = 0;
    if (choice.ends()) {
      // The centre piece as near the middle of its range as the ends allow.
      double middle = choice.centre() ? (permits.centreMin() + permits.centreMax()) / 2 : 0;
      double least = 2 * Math.max(permits.endShare() * tile, run.leastEnd());
      centre = choice.centre() ? clamped(middle, rest - 2 * tile, rest - least) : 0;
      end = (rest - centre) / 2;
    } else if (choice.centre()) {
      centre = rest;
    }
    int inside = choice.whole() - 2 * choice.outside();
    set(run, choice.whole(), inside / run.repeat(), tile, centre, end);
  }

  private static double clamped(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }

  /**
   * A plain run: whole tiles if they fit, else the largest cut ends that are shorter than a tile. By the half-tile rule
   * they are at least half a tile less half a joint. A run shorter than two such ends is one piece.
   */
  private void plain(RunClass run) {
    double joint = found.joint();
    double tile = run.tile();
    double room = run.room(found.move());
    long fit = Math.round((room - (run.joints() - 1) * joint) / (tile + joint));
    if (fit > 0 && Math.abs(room - fit * tile - run.jointsOf((int) fit) * joint) <= WHOLE) {
      set(run, (int) fit, (int) fit, tile, 0, 0);
      return;
    }
    int whole = (int) Math.ceil((room - 2 * tile - (1 + run.joints()) * joint) / (tile + joint));
    double end = (room - Math.max(whole, 0) * tile - run.jointsOf(Math.max(whole, 0) + 2) * joint) / 2;
    double single = room - run.joints() * joint;
    if (end >= (tile - joint) / 2 - WHOLE) {
      set(run, Math.max(whole, 0), Math.max(whole, 0), tile, 0, end);
    } else if (single > WHOLE) {
      set(run, 0, 0, tile, single, 0);
    }
  }

  private void set(RunClass run, int whole, int repeats, double tile, double centre, double end) {
    int row = run.row();
    for (int side : run.sides()) {
      BandSide of = border.path().sides().get(side);
      double deep = found.move() + border.before(row) + row * found.joint();
      EndTake take = EndTake.of(border, row, of, true).plus(EndTake.of(border, row, of, false));
      double length = of.length() - of.shrink() * deep;
      runs[row * border.path().sides().size() + side] = new RunLayout(row, side, length, take.fixed(), take.joints(),
          whole, repeats, tile, found.joint(), centre, end);
    }
  }
}
