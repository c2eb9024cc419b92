// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/** What a band does at a corner. */
public enum Corner {
  /** A corner tile with a drawing of its own. */
  TILE,
  /** A corner tile on which the band swings round; the next side is the same band, a quarter turn on. */
  TURNED,
  /** The end tiles of both sides are cut on the corner's diagonal. */
  MITRED,
  /** One side runs through to the outline; the other stops against it. */
  BUTTED,
  /** A corner tile that is its own mirror image about the diagonal; the next side is the mirror image of this one. */
  MIRRORED;

  /** Whether the corner is a tile of its own. */
  public boolean ownTile() {
    return this == TILE || this == TURNED || this == MIRRORED;
  }
}
