// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

/** Which of two mirror images a design is. */
public enum Hand {
  /** The design is its own mirror image once turned: one tile serves for both. */
  ONE,
  /** As the motif was drawn; its mirror image is another tile. */
  AS_DRAWN,
  /** The mirror image of the motif. */
  MIRRORED
}
