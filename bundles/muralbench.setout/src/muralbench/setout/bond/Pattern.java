// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;
import java.util.function.Consumer;
import muralbench.setout.geometry.Box;

/** A laying pattern with its measures, spread over the whole plane; see {@link Bond#lay}. */
public interface Pattern {
  /** An axis of the pattern. */
  enum Axis {
    /** Along the courses. */
    ALONG,
    /** Across the courses. */
    ACROSS
  }

  /**
   * A row of equal faces at equal distances along an axis: faces at start + k * module for every whole k.
   *
   * @param start where one face begins, mm in the bond's coordinates
   * @param face length of a face along the axis, mm, above 0
   * @param module face and joint, mm, at least {@code face}
   */
  record Run(double start, double face, double module) {}

  /**
   * Names every cell whose face meets the area, each once, in any order.
   *
   * @param area in the bond's coordinates
   */
  void cells(Box area, Consumer<Cell> each);

  /**
   * The different rows of faces that a straight edge across the given axis cuts within the area. From these the balanced
   * origin is found. Empty if the pattern has no such rows; the panel is then balanced by its pieces or centred.
   */
  List<Run> runs(Axis axis, Box area);

  /** The number of cells per mm², for limits and progress. */
  double density();
}
