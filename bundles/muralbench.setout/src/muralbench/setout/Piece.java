// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.List;
import muralbench.setout.bond.Cell;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;

/**
 * One piece of tile in its place on the wall.
 *
 * @param key its key, unique in the mural, such as {@code A-03-12}
 * @param course course, counted from 1 at the bottom of the panel; 0 in a border
 * @param position position in the course, counted from 1 at the left; in a border the number in its row
 * @param kind how it was made from its tile
 * @param tile id of the tile kind; followed by a blank and the part where the bond lays something else, as in {@code T6 dot}
 * @param area of the face that is left, mm², exact also for curved edges
 * @param outline its edge in the wall plane, counter-clockwise
 * @param holes holes inside, each clockwise; mostly none
 * @param cell the cell of the bond it comes from, in the bond's own coordinates
 * @param placed the movement that takes the bond's coordinates to the wall plane; its inverse shows the piece as it
 *     lies on its tile
 * @param row row of the border it belongs to, from 1 at the outer edge; 0 in the field
 */
public record Piece(String key, int course, int position, PieceKind kind, String tile, double area, Contour outline,
    List<Contour> holes, Cell cell, Motion placed, int row) {
  public Piece {
    holes = List.copyOf(holes);
  }

  /** A piece of the field. */
  public Piece(String key, int course, int position, PieceKind kind, String tile, double area, Contour outline,
      List<Contour> holes, Cell cell, Motion placed) {
    this(key, course, position, kind, tile, area, outline, holes, cell, placed, 0);
  }

  /** Whether it belongs to a border and not to the field. */
  public boolean inBorder() {
    return row > 0;
  }

  /** The smallest upright rectangle around the piece on the wall. */
  public Box box() {
    return outline.box();
  }

  /** Whether no edge of the panel cuts its face; a face with curved sides is cut to shape from a blank all the same. */
  public boolean uncut() {
    return kind == PieceKind.WHOLE
        || holes.isEmpty() && Math.abs(cell.face().area() - area) <= SetOut.DUST_AREA && !cell.face().straight();
  }

  /** The whole face of its tile, in the wall plane. */
  public Contour face() {
    return cell.face().moved(placed);
  }
}
