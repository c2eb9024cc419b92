// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.List;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.order.MadeUp;

/**
 * The set-out of one panel.
 *
 * @param spec what was asked for
 * @param origin lower left corner of the tile face the pattern starts from, chosen or given, in the wall plane
 * @param area area of the panel less its openings, mm², exact
 * @param tiled the edges of the region that is tiled (the outline and the openings after the edge gap): outer edges
 *     counter-clockwise, holes clockwise
 * @param pieces the pieces, course by course from the bottom, each course from the left; those of a border come last
 * @param movement the joints that were opened to be movement joints: vertical ones from the left, then horizontal ones
 *     from below
 */
public record PanelSetOut(PanelSpec spec, Vec origin, double area, List<Contour> tiled, List<Piece> pieces,
    List<MovementJoint> movement) {
  public PanelSetOut {
    tiled = List.copyOf(tiled);
    pieces = List.copyOf(pieces);
    movement = List.copyOf(movement);
  }

  /** A set-out without movement joints. */
  public PanelSetOut(PanelSpec spec, Vec origin, double area, List<Contour> tiled, List<Piece> pieces) {
    this(spec, origin, area, tiled, pieces, List.of());
  }

  /** How many pieces are whole tiles. */
  public int whole() {
    return (int) pieces.stream().filter(piece -> piece.kind() == PieceKind.WHOLE).count();
  }

  /** How many pieces are cut. */
  public int cut() {
    return pieces.size() - whole();
  }

  /**
   * How many tiles the pieces come from. Painted before cutting, every cell of the bond that leaves at least one piece
   * takes one tile; painted after cutting, pieces share tiles as {@link MadeUp} finds. Spares are not counted.
   */
  public int tilesToOrder() {
    if (spec.making().afterCutting()) {
      return MadeUp.count(this);
    }
    return (int) pieces.stream().map(Piece::cell).distinct().count();
  }

  /** Whether the pieces stand in rings about the origin, as wedges. */
  public boolean concentric() {
    // A bond lays rings or none, and the field comes first: one piece tells, however many there are.
    return !pieces.isEmpty() && !pieces.get(0).inBorder() && !pieces.get(0).cell().face().straight();
  }

  /** The pieces of the field, without those of a border. */
  public List<Piece> field() {
    return pieces.isEmpty() || !pieces.get(pieces.size() - 1).inBorder() ? pieces
        : pieces.stream().filter(piece -> !piece.inBorder()).toList();
  }

  /** The number of courses. */
  public int courses() {
    return pieces.stream().mapToInt(Piece::course).max().orElse(0);
  }
}
