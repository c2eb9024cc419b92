// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

/** A side of a face as it is laid, counter-clockwise. */
public enum FaceSide {
  /** The lower side. */
  BOTTOM,
  /** The right side. */
  RIGHT,
  /** The upper side. */
  TOP,
  /** The left side. */
  LEFT
}
