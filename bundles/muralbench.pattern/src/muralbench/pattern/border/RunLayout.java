// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.math.BigDecimal;

/**
 * The numbers of one row on one side. From the start: what the corner takes, the cut end if there is one, the whole
 * tiles, half of them before and half after the centre piece if there is one, the other cut end, what the corner
 * takes; a joint between any two.
 *
 * @param row number of the row from 0 at the outer edge
 * @param side number of the side from 0
 * @param length of the outer edge of the row on this side, mm
 * @param taken what the two corners take of it, mm, without joints
 * @param cornerJoints what they take in joints
 * @param whole number of whole tiles
 * @param repeats number of whole repeats; beside cut ends there may be whole tiles of the next repeats, see {@link
 *     #outside}
 * @param tile length of a whole tile, mm
 * @param joint width of the joints, mm
 * @param centre length of the centre piece, mm; 0 if there is none
 * @param end length of each of the two cut ends, mm; 0 if there are none
 */
public record RunLayout(int row, int side, double length, double taken, double cornerJoints, int whole, int repeats,
    double tile, double joint, double centre, double end) {
  /**
   * How many whole tiles of the neighbouring repeats stand at each end, beside the cut tile; less than one repeat.
   *
   * @param repeat tiles in one repeat
   */
  public int outside(int repeat) {
    return (whole - repeats * repeat) / 2;
  }

  /** How many pieces lie between the corners. */
  public int pieces() {
    return whole + (centre > 0 ? 1 : 0) + (end > 0 ? 2 : 0);
  }

  /** How many joints there are, those at the corners included. */
  public double joints() {
    return pieces() - 1 + cornerJoints;
  }

  /** What is left of the length when everything is laid, mm: summed exactly from the numbers of this record. */
  public double residual() {
    return exact(length).subtract(exact(taken)).subtract(exact(tile).multiply(exact(whole)))
        .subtract(exact(centre)).subtract(exact(end).multiply(exact(2))).subtract(exact(joints()).multiply(exact(joint)))
        .doubleValue();
  }

  /** The residual as a share of the length; at most 1e-9 in a layout that the solver gives. */
  public double relativeResidual() {
    return Math.abs(residual()) / length;
  }

  private static BigDecimal exact(double value) {
    return new BigDecimal(value);
  }
}
