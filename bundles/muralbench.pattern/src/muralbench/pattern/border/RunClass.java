// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.ArrayList;
import java.util.List;

/**
 * The sides of one row that close alike, such as the left and the right one of a rectangle: they get the same
 * numbers. A side of a row closes if
 *
 * <pre>length - shrink (move + before + row joint) - taken = whole tile + centre + 2 end + (pieces - 1 + joints) joint</pre>
 *
 * where {@code before} is the width of the rows outside this one. The left side is the edge of the row less what the
 * corners take; the right one is linear in the joint, the tile's length and the move, which is why closing is linear
 * algebra.
 *
 * @param row number of the row from 0
 * @param sides numbers of the sides
 * @param length of the outer edge of the path, mm
 * @param shrink what the edge loses for each mm that it lies farther in
 * @param taken what the corners and the rows outside take, without joints, mm
 * @param joints what they take in joints
 * @param tile length of a tile of the row, mm
 * @param repeat tiles in one repeat
 * @param leastEnd the least an end tile has to be long for its corner to be cut from it, mm
 */
record RunClass(int row, List<Integer> sides, double length, int shrink, double taken, double joints, double tile,
    int repeat, double leastEnd) {
  /** Lengths that differ by no more than this share are equal. */
  static final double EQUAL = 1e-9;

  /** The classes of one row. */
  static List<RunClass> of(Border border, int row) {
    List<RunClass> classes = new ArrayList<>();
    List<BandSide> sides = border.path().sides();
    for (int i = 0; i < sides.size(); i++) {
      RunClass own = single(border, row, i, sides.get(i));
      int like = 0;
      while (like < classes.size() && !classes.get(like).like(own)) {
        like++;
      }
      if (like == classes.size()) {
        classes.add(own);
      } else {
        classes.set(like, classes.get(like).with(i));
      }
    }
    return classes;
  }

  private static RunClass single(Border border, int row, int index, BandSide side) {
    EndTake take = EndTake.of(border, row, side, true).plus(EndTake.of(border, row, side, false));
    BandRow of = border.rows().get(row);
    int shrink = side.shrink();
    double leastEnd = border.corner() == Corner.MITRED && border.path().closed() ? of.width() : 0;
    return new RunClass(row, List.of(index), side.length(), shrink, take.fixed() + shrink * border.before(row),
        take.joints() + shrink * row, of.length(), of.repeat(), leastEnd);
  }

  private boolean like(RunClass other) {
    return shrink == other.shrink && Math.abs(length - other.length) <= EQUAL * length
        && Math.abs(taken - other.taken) <= EQUAL * length && joints == other.joints;
  }

  private RunClass with(int side) {
    List<Integer> more = new ArrayList<>(sides);
    more.add(side);
    return new RunClass(row, List.copyOf(more), length, shrink, taken, joints, tile, repeat, leastEnd);
  }

  /** What is left for tiles and joints without the joint, for a band moved in, mm. */
  double room(double move) {
    return length - shrink * move - taken;
  }

  /** How many joints there are with so many pieces. */
  double jointsOf(int pieces) {
    return pieces - 1 + joints;
  }
}
