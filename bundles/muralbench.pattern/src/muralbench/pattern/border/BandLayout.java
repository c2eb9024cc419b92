// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import muralbench.setout.geometry.Contour;

/**
 * A way to lay a band so that it closes on all sides at once.
 *
 * @param border the band
 * @param joint the width of all its joints, mm
 * @param move how far it lies farther in than the path, mm; negative for out
 * @param scale length of a painted tile as made over its length as drawn, 1 if it is not changed; plain rows keep
 *     theirs
 * @param runs the numbers of each side, row by row
 * @param means what it takes
 * @param harm the order of layouts: the weights of the means (see {@link Means}) plus a part below 1 that grows with
 *     the number of centre pieces and cut ends, and then with how much of what is permitted is used
 */
public record BandLayout(Border border, double joint, double move, double scale, List<RunLayout> runs,
    Set<Means> means, double harm) {
  public BandLayout {
    runs = List.copyOf(runs);
    means = Set.copyOf(means);
  }

  static BandLayout of(Border border, Found found, int classes) {
    List<RunLayout> runs = Runs.of(border, found);
    EnumSet<Means> means = EnumSet.noneOf(Means.class);
    for (Means one : Means.values()) {
      if (one.in(found.mask())) {
        means.add(one);
      }
    }
    // At most two per class, and the amount stays below 1: the harm grows in the order of the search.
    double part = (found.count() + Math.min(found.amount(), 0.999)) / (2 * classes + 1);
    return new BandLayout(border, found.joint(), found.move(), found.scale(), runs, means, found.mask() + part);
  }

  /** The numbers of a row on a side, both from 0. */
  public RunLayout run(int row, int side) {
    return runs.get(row * border.path().sides().size() + side);
  }

  /** The outer edge of a row. */
  public BandPath rowPath(int row) {
    return border.path().movedIn(move + border.before(row) + row * joint);
  }

  /** How far the field lies inside the path: the move, the band and a joint, mm. */
  public double fieldDepth() {
    int rows = border.rows().size();
    return move + border.before(rows) + rows * joint;
  }

  /**
   * The outline of the field inside the band: its inner edge less a joint; set the field out in it again. Empty for a
   * straight run, which encloses nothing. Corner tiles larger than the row are left out of the field, with a joint.
   */
  public Optional<Contour> field() {
    return border.path().closed() ? Optional.of(FieldOutline.of(this)) : Optional.empty();
  }

  /** The largest share of a side by which a run fails to close; at most 1e-9. */
  public double relativeResidual() {
    return runs.stream().mapToDouble(RunLayout::relativeResidual).max().orElse(0);
  }

  /** The runs with a centre piece or cut ends, in the rows that show a motif. */
  public List<RunLayout> broken() {
    List<RunLayout> broken = new ArrayList<>();
    for (RunLayout run : runs) {
      if (!border.rows().get(run.row()).plain() && (run.centre() > 0 || run.end() > 0)) {
        broken.add(run);
      }
    }
    return broken;
  }
}
