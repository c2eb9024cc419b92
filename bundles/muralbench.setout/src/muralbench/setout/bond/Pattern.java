// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

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

  /**
   * Points of the pattern that may be laid on the middle of a panel to balance it, such as the centre of a face and a
   * crossing of joints. Only asked for if there are no {@link #runs}. Empty means the centres of the tile and its joints
   * as in a grid.
   */
  default List<Vec> centres() {
    return List.of();
  }

  /**
   * Whether the courses are rings around (0, 0), counted from the middle outwards, with positions clockwise; otherwise they
   * are counted upwards and the positions to the right.
   */
  default boolean concentric() {
    return false;
  }

  /** The smallest part that, repeated, makes the pattern; empty for patterns that do not repeat, such as rings. */
  default Optional<Repeat> repeat() {
    return Optional.empty();
  }

  /**
   * The repeat of a pattern.
   *
   * @param along one direction of repetition, mm
   * @param across the other; {@code along} x {@code across} is the area of the repeat
   * @param faces the faces in one repeat, counter-clockwise
   */
  record Repeat(Vec along, Vec across, List<Contour> faces) {
    public Repeat {
      faces = List.copyOf(faces);
    }

    /** Area of one repeat, faces and joints, mm². */
    public double area() {
      return Math.abs(along.cross(across));
    }
  }
}
