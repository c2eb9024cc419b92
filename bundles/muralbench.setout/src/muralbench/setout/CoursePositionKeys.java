// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

/** The scheme {@code PANEL-COURSE-POSITION}; see {@link KeyScheme#coursePosition()}. */
final class CoursePositionKeys implements KeyScheme {
  @Override
  public String key(String panel, int course, int courses, int position, int positions, int part) {
    return panel + '-' + padded(course, courses) + '-' + padded(position, positions) + letters(part);
  }

  @Override
  public String borderKey(String panel, int row, int number, int numbers, int part) {
    return panel + "-R" + row + '-' + padded(number, numbers) + letters(part);
  }

  private static String padded(int number, int largest) {
    int width = Math.max(2, Integer.toString(largest).length());
    return "0".repeat(Math.max(0, width - Integer.toString(number).length())) + number;
  }

  /** Nothing for the first piece, then b, c … z, aa, ab … */
  private static String letters(int part) {
    String letters = "";
    for (int left = part; part > 0 && left >= 0; left = left / 26 - 1) {
      letters = (char) ('a' + left % 26) + letters;
    }
    return letters;
  }
}
