// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/**
 * What a corner does to the motif of a band.
 *
 * @param course whether the motif goes on round the corner
 * @param keepsDirection whether a motif with a direction, such as a running vine, runs the same way all round
 * @param otherHand whether tiles are needed in a hand that the run itself does not have
 * @param reason why, in plain words
 */
public record CornerVerdict(Course course, boolean keepsDirection, boolean otherHand, String reason) {
  /** Whether a motif goes on. */
  public enum Course {
    /** It goes on. */
    CONTINUOUS,
    /** It goes on if the corner tile is drawn so. */
    BY_DRAWING,
    /** It breaks off. */
    BROKEN
  }
}
