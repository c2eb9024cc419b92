// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.List;

/**
 * A band of border tiles to be laid.
 *
 * @param path its outer edge
 * @param rows its rows from the outer edge inwards, at least one; the joint is also the joint between rows
 * @param corner what it does at the corners; of no account on a straight run
 * @param through which side runs through at butted corners; of no account at others
 * @param joint the joints it may have
 * @param permits what else may be done
 */
public record Border(BandPath path, List<BandRow> rows, Corner corner, Through through, JointRange joint,
    Permits permits) {
  public Border {
    rows = List.copyOf(rows);
  }

  /** A band of one row with the usual choice at butted corners: level sides run through. */
  public static Border of(BandPath path, BandRow row, Corner corner, JointRange joint, Permits permits) {
    return new Border(path, List.of(row), corner, Through.LEVEL, joint, permits);
  }

  /** The same band with other permits. */
  public Border permits(Permits other) {
    return new Border(path, rows, corner, through, joint, other);
  }

  /** The same band with another range of joints. */
  public Border joint(JointRange other) {
    return new Border(path, rows, corner, through, other, permits);
  }

  /** Width of all rows before a row, without joints, mm. */
  double before(int row) {
    return rows.subList(0, row).stream().mapToDouble(BandRow::width).sum();
  }
}
