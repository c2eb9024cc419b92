// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

/**
 * A side of a rectangular face as it hangs, turned as little as can be until its sides are level and plumb;
 * counter-clockwise.
 */
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
