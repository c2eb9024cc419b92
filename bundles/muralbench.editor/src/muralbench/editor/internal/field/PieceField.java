// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.field;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementStrips;

/**
 * The pieces of one panel, ready to be looked up by place. The boxes are kept in one array, so that even tens of
 * thousands of pieces are passed over in well under a millisecond.
 */
public final class PieceField {
  private static final double CHORD_ERROR = 0.2;

  private final PanelSetOut setOut;
  private final List<Piece> pieces;
  private final Box[] boxes;
  private final PieceShape[] shapes;
  private final List<Sealed> sealed;

  /**
   * A part of a movement joint with tile beside it.
   *
   * @param joint the joint
   * @param strip what is filled with sealant, mm
   */
  public record Sealed(MovementJoint joint, Box strip) {}

  /** The pieces of a set-out. */
  public PieceField(PanelSetOut setOut) {
    this(setOut, Optional.empty());
  }

  /**
   * The pieces of a set-out that has many pieces in common with another.
   *
   * @param before the other; what is known of the same pieces is used again
   */
  public PieceField(PanelSetOut setOut, Optional<PieceField> before) {
    this.setOut = setOut;
    this.pieces = setOut.pieces();
    this.boxes = new Box[pieces.size()];
    this.shapes = new PieceShape[boxes.length];
    Map<Piece, Integer> known = before.map(PieceField::places).orElse(Map.of());
    for (int i = 0; i < boxes.length; i++) {
      Integer place = known.get(pieces.get(i));
      boxes[i] = place == null ? pieces.get(i).box() : before.get().boxes[place];
      shapes[i] = place == null ? null : before.get().shapes[place];
    }
    this.sealed = setOut.movement().stream().flatMap(joint -> MovementStrips.of(setOut, joint).stream()
        .map(strip -> new Sealed(joint, strip))).toList();
  }

  private Map<Piece, Integer> places() {
    Map<Piece, Integer> places = new IdentityHashMap<>();
    for (int i = 0; i < boxes.length; i++) {
      places.put(pieces.get(i), i);
    }
    return places;
  }

  /** The set-out. */
  public PanelSetOut setOut() {
    return setOut;
  }

  /** What is filled with sealant: the movement joints, where there is tile beside them. */
  public List<Sealed> sealed() {
    return sealed;
  }

  /** The movement joint at a place on the wall, or no farther from it than {@code reach}, mm. */
  public Optional<MovementJoint> movementAt(double x, double y, double reach) {
    Box around = new Box(x, y, x, y).grown(reach);
    return sealed.stream().filter(one -> one.strip().meets(around)).map(Sealed::joint).findFirst();
  }

  /** The piece at a place on the wall. */
  public Optional<Piece> at(double x, double y) {
    for (int i = 0; i < boxes.length; i++) {
      Box box = boxes[i];
      if (x >= box.minX() && x <= box.maxX() && y >= box.minY() && y <= box.maxY() && shape(i).holds(x, y)) {
        return Optional.of(pieces.get(i));
      }
    }
    return Optional.empty();
  }

  /** Passes on the shapes of all pieces that meet a part of the wall, in the order of the set-out. */
  public void visible(Box part, Consumer<PieceShape> each) {
    for (int i = 0; i < boxes.length; i++) {
      if (boxes[i].meets(part)) {
        each.accept(shape(i));
      }
    }
  }

  private PieceShape shape(int index) {
    if (shapes[index] == null) {
      Piece piece = pieces.get(index);
      List<List<Vec>> holes = piece.holes().stream().map(PieceField::points).toList();
      shapes[index] = new PieceShape(piece, boxes[index], points(piece.outline()), holes);
    }
    return shapes[index];
  }

  private static List<Vec> points(Contour contour) {
    return contour.points(CHORD_ERROR);
  }
}
