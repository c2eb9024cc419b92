// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

/**
 * A tile as it comes on the wall.
 *
 * @param design what is painted on it
 * @param turn how the painted tile is turned, counter-clockwise from the way it was painted; never a mirror image. Of
 *     several turns that look the same the smallest.
 */
public record PaintedTile(Design design, Orientation turn) {}
