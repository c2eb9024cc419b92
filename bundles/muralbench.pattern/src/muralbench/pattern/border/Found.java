// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.List;

/**
 * A way to close the rows that show a motif.
 *
 * @param mask the means used, by their weights
 * @param count how many centre pieces and pairs of cut ends its classes of runs have
 * @param amount how far the means go, mean of the shares of what is permitted, 0 to 1
 * @param choices what each class is made of
 * @param joint mm
 * @param scale length of a tile as made over its length as drawn
 * @param move mm inwards
 */
record Found(int mask, int count, double amount, List<Choice> choices, double joint, double scale, double move) {
  /** Whether another way has the same pieces and gets along with fewer means. */
  boolean outdoneBy(Found other) {
    return (other.mask & mask) == other.mask && other.choices.equals(choices);
  }
}
