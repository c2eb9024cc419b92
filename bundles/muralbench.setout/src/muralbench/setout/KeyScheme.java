// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

/** How pieces are named. */
public interface KeyScheme {
  /**
   * The key of a piece.
   *
   * @param panel id of the panel
   * @param course course from 1 at the bottom
   * @param courses number of courses in the panel
   * @param position position from 1 at the left
   * @param positions largest position in the panel
   * @param part 0 for the first piece of a cell, 1 for the second and so on
   * @return a key that differs for differing arguments with the same panel, course count and position count
   */
  String key(String panel, int course, int courses, int position, int positions, int part);

  /**
   * The key of a piece of a border.
   *
   * @param panel id of the panel
   * @param row row of the border, from 1 at the outer edge
   * @param number number of the tile in the row, from 1, clockwise from the lower left corner
   * @param numbers largest number in the row
   * @param part as for other pieces
   * @return a key that no other piece of the panel has
   */
  String borderKey(String panel, int row, int number, int numbers, int part);

  /**
   * {@code A-03-12}, and {@code A-03-12b} for the second piece of a cell; numbers padded to equal width in a panel. Borders have
   * {@code A-R1-07} for the seventh tile of the outermost row.
   */
  static KeyScheme coursePosition() {
    return new CoursePositionKeys();
  }
}
