// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import muralbench.setout.geometry.Box;

/**
 * What lies around the elevation on a key sheet, mm: nearest to it a strip for keys that find no room in their piece,
 * outside of that the running dimensions (left and below) and the names of lines (right and above).
 *
 * @param labels width of the strip for keys
 */
record Gutters(double labels) {
  /** Room for running dimensions. */
  static final double DIMENSIONS = 18;
  /** Room for names of lines and, above them, the heading. */
  static final double NAMES = 13.5;
  /** Room for names of level lines, which read upwards. */
  static final double LEVELS = 9;

  /** The most that the elevation itself may fill of a drawing area, as a box on paper. */
  Box room(Box drawing) {
    return new Box(drawing.minX() + DIMENSIONS + labels, drawing.minY() + DIMENSIONS + labels,
        drawing.maxX() - LEVELS - labels, drawing.maxY() - NAMES - labels);
  }
}
