// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/**
 * What makes a band close, the least harm first. Each weighs twice as much as the one before, hence more than all
 * before it together: what is worst in a layout decides first.
 */
public enum Means {
  /** A joint other than the preferred one. */
  JOINT,
  /** The band moved in or out. */
  MOVE,
  /** Painted tiles made longer or shorter. */
  SCALE,
  /** A piece in the middle of a side. */
  CENTRE,
  /** Both ends of a side cut alike. */
  ENDS;

  /** Its weight: 1, 2, 4, 8, 16. */
  public int weight() {
    return 1 << ordinal();
  }

  boolean in(int mask) {
    return (mask & weight()) != 0;
  }
}
