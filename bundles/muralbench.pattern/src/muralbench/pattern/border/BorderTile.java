// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;

/**
 * One tile of a band in its place on the wall.
 *
 * @param row number of the row from 1 at the outer edge
 * @param number number of the tile in its row from 1, clockwise from the lower left corner
 * @param side number of the side from 1; a corner counts to the side that starts there
 * @param position position on the side from 1 in the direction of travel; 0 for a corner tile
 * @param piece what it is
 * @param motif name of its motif
 * @param step which tile of the sequence it is, from 0; -1 for corner tiles and centre pieces
 * @param turn how it lies; drawings are made for a top side, outer edge up
 * @param cell the whole tile before it is cut, in the wall plane; cuts may reach beyond the band
 * @param face what is left of it, counter-clockwise, mm in the wall plane
 */
public record BorderTile(int row, int number, int side, int position, BorderPiece piece, String motif, int step,
    TileTurn turn, Box cell, Contour face) {
  /** Area of the face, mm². */
  public double area() {
    return face.area();
  }
}
