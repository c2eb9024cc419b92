// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import muralbench.setout.geometry.Contour;

/**
 * One place for a tile in a laying pattern.
 *
 * @param course number of the course; grows upwards in the bond's coordinates, may be negative
 * @param position number in the course; grows to the right in the bond's coordinates, may be negative
 * @param face the uncut face, counter-clockwise, in the bond's coordinates, mm
 * @param part what else than the field tile lies here, in one lower-case word such as {@code dot}; empty for the field tile
 */
public record Cell(int course, int position, Contour face, String part) {
  /** A place for the field tile. */
  public Cell(int course, int position, Contour face) {
    this(course, position, face, "");
  }
}
