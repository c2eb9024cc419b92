// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Contour;

/**
 * One piece of a band on a curve.
 *
 * @param number number from 1, clockwise from the start of the {@link Curve}
 * @param piece {@link BorderPiece#WEDGE} on the curve; in a leg whole, cut at its foot, or cut along the springing line
 * @param motif name of its motif
 * @param step which tile of the sequence it is, from 0
 * @param mirrored whether its drawing is the other hand
 * @param degrees by how much the piece is turned, counter-clockwise, 0 at the top of a circle
 * @param placed takes the drawing, the size of the tile with its lower left corner at (0, 0), to the wall. A wedge is
 *     not the same upside down: a drawing turned half round on a wedge is another piece to paint
 * @param face the piece, counter-clockwise, mm in the wall plane
 */
public record CurveTile(int number, BorderPiece piece, String motif, int step, boolean mirrored, double degrees,
    Isometry placed, Contour face) {
  /** Area of the face, mm². */
  public double area() {
    return face.area();
  }
}
