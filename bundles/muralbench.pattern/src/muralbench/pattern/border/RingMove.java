// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/** A movement that may leave a band round a rectangle as it is. */
public enum RingMove {
  /** A half turn about the middle. */
  HALF_TURN,
  /** A quarter turn about the middle; only of a square. */
  QUARTER_TURN,
  /** The mirrors in the upright and in the level middle line. */
  MIDDLE_MIRRORS,
  /** The mirrors in the two diagonals; only of a square. */
  DIAGONAL_MIRRORS
}
