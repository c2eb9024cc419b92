// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.bond.Cell;
import muralbench.setout.bond.Pattern;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementJoint;

/**
 * Carries a set-out over to another place, piece by piece, and keys it anew. A mirrored panel is laid in the mirror
 * image of the pattern: its tiles are cut to the mirror image and never turned over, since a glazed face cannot be.
 */
final class RepeatedPanel {
  private static final double CORNER = 1e-6;

  private final PanelSpec panel;
  private final PanelSetOut other;
  private final Transfer to;
  private final boolean concentric;
  private final Motion aside;
  private final Map<Integer, Integer> last = new HashMap<>();

  /**
   * A set-out to be repeated.
   *
   * @param panel the panel that repeats it
   * @param pattern the pattern of the other panel
   */
  RepeatedPanel(PanelSpec panel, PanelSetOut other, Transfer to, Pattern pattern) {
    this.panel = panel;
    this.other = other;
    this.to = to;
    concentric = pattern.concentric();
    aside = Motion.shift(new Vec(to.mirrored() && !concentric ? firstFace(pattern) : 0, 0));
    for (Piece piece : other.field()) {
      last.merge(piece.cell().course(), piece.cell().position(), Math::max);
    }
  }

  /** Width of the face that has its lower left corner at (0, 0): in the mirror image that corner is where it was. */
  private static double firstFace(Pattern pattern) {
    double[] width = {0};
    pattern.cells(new Box(-CORNER, -CORNER, CORNER, CORNER), cell -> {
      Box face = cell.face().box();
      if (Math.abs(face.minX()) < CORNER && Math.abs(face.minY()) < CORNER) {
        width[0] = face.maxX();
      }
    });
    return width[0];
  }

  PanelSetOut laid() {
    Motion placed = aside.inverse().then(to.of(other.field().get(0).placed()));
    List<Piece> pieces = new ArrayList<>(new PieceNaming(panel, placed, concentric).named(cells()));
    pieces.addAll(new RepeatedBand(panel, other, to).pieces());
    return new PanelSetOut(panel, placed.of(Vec.ZERO), other.area(), other.tiled().stream().map(to::of).toList(), pieces,
        other.movement().stream().map(joint -> joint.moved(to)).sorted(MovementJoint.ORDER).toList());
  }

  /** The cells with what is left of them; the pieces of one cell follow each other. */
  private List<CutCell> cells() {
    List<CutCell> cells = new ArrayList<>();
    Cell before = null;
    for (Piece piece : other.field()) {
      CutCell.Part part = new CutCell.Part(piece.kind(), piece.area(), to.of(piece.outline()),
          piece.holes().stream().map(to::of).toList());
      if (piece.cell() == before) {
        cells.get(cells.size() - 1).parts().add(part);
      } else {
        cells.add(new CutCell(cell(piece.cell()), new ArrayList<>(List.of(part))));
        before = piece.cell();
      }
    }
    return cells;
  }

  private Cell cell(Cell cell) {
    if (!to.mirrored()) {
      return cell;
    }
    Contour face = cell.face().mirrored().moved(aside);
    return new Cell(cell.course(), concentric ? clockwise(cell) : -cell.position(), face, cell.part());
  }

  /** The number of a piece in its ring, still clockwise and with the same one first. */
  private int clockwise(Cell cell) {
    return cell.position() == 0 ? 0 : last.get(cell.course()) + 1 - cell.position();
  }
}
