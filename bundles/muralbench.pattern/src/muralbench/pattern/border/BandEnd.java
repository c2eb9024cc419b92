// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/** How a side of a band ends: what the outline does there. */
public enum BandEnd {
  /** The outline turns towards the band's inner side, as at the four corners of a rectangle. */
  CONVEX,
  /** The outline turns away from the band's inner side, as at the inner corner of an L. */
  REFLEX,
  /** The band stops: a straight run that meets nothing. */
  FREE
}
