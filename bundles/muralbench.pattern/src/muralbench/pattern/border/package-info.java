// SPDX-License-Identifier: EPL-2.0
/**
 * Bands of border tiles: runs, corners and the layouts that close.
 *
 * <p>A {@link muralbench.pattern.border.Border} is a path, its rows, its corners and what is permitted; {@link
 * muralbench.pattern.border.ClosingSolver} gives the best ways to close it, {@link
 * muralbench.pattern.border.BandTiles} the tiles of one on the wall, and {@link
 * muralbench.pattern.border.BandLayout#field()} the outline that is left for the field. {@link
 * muralbench.pattern.border.CornerRule} tells which corners keep a motif going. On circles, arcs and arches {@link
 * muralbench.pattern.border.CurveSolver} and {@link muralbench.pattern.border.CurveTiles} do the same. {@link
 * muralbench.pattern.border.BandWords} puts it in plain words. Lengths are millimetres.
 */
package muralbench.pattern.border;
