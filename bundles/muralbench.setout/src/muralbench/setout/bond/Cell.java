// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import muralbench.setout.geometry.Contour;

/**
 * One place for a tile in a laying pattern.
 *
 * @param course number of the course; grows upwards in the bond's coordinates, may be negative
 * @param position number in the course; grows to the right in the bond's coordinates, may be negative
 * @param face the uncut face, counter-clockwise, in the bond's coordinates, mm
 */
public record Cell(int course, int position, Contour face) {}
