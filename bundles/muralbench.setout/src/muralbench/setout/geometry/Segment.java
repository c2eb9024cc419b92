// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.List;

/**
 * One stretch of a contour: a straight line, an arc of an ellipse or circle, or a cubic Bezier curve. Immutable; all
 * figures are exact to rounding of doubles, except lengths of ellipses and Bezier curves, which are integrated to a
 * relative error below 1e-9. The parameter {@code t} runs from 0 at the start to 1 at the end.
 */
public sealed interface Segment permits Line, Arc, Cubic {
  /** The point at t = 0. */
  Vec start();

  /** The point at t = 1. */
  Vec end();

  /** The point at {@code t}, 0 to 1. */
  Vec at(double t);

  /** The derivative by {@code t} at {@code t}, mm: the direction of travel. */
  Vec tangent(double t);

  /** Length along the segment, mm. */
  double length();

  /**
   * One half of the integral of x dy - y dx along the segment, mm². Summed over a closed contour this is its area,
   * positive when the contour runs counter-clockwise.
   */
  double sweptArea();

  /** The smallest upright rectangle around the segment. */
  Box box();

  /**
   * Points along the segment, the start left out and the end included, such that no chord is farther than
   * {@code chordError} mm from the curve.
   *
   * @param chordError above 0
   */
  List<Vec> flatten(double chordError);

  /** The same stretch walked the other way. */
  Segment reversed();

  /** The stretch between two parameters, {@code from} less than {@code to}. */
  Segment part(double from, double to);

  /** The segment after a movement. */
  Segment moved(Motion motion);

  /** The mirror image about x = 0, walked the other way, so that what lay to the left still does. */
  Segment mirrored();

  /** Whether the segment is a straight line. */
  default boolean straight() {
    return this instanceof Line;
  }
}
