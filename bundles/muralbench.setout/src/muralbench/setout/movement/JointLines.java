// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;

/**
 * The joints of a set-out that run straight through the whole panel, found from the faces of its tiles, so that it does
 * not matter which bond laid them: all joints of a grid, the joints between courses of a running bond, none of a
 * herringbone.
 */
public final class JointLines {
  private static final double TOUCH = 1e-6;

  private JointLines() {}

  /**
   * A straight joint.
   *
   * @param at its middle, mm: x of a vertical one, y of a horizontal one
   * @param width mm, 0 for tiles set edge to edge
   */
  public record JointLine(double at, double width) {}

  private record Reach(double low, double high) {}

  /** The joints along an axis, in growing order. */
  public static List<JointLine> of(PanelSetOut panel, MovementAxis axis) {
    List<Reach> faces = new ArrayList<>(panel.pieces().size());
    for (Piece piece : panel.field()) {
      Box box = piece.face().box();
      faces.add(axis == MovementAxis.VERTICAL ? new Reach(box.minX(), box.maxX())
          : new Reach(box.minY(), box.maxY()));
    }
    faces.sort(Comparator.comparingDouble(Reach::low));
    List<JointLine> lines = new ArrayList<>();
    double covered = faces.isEmpty() ? 0 : faces.get(0).high();
    double first = faces.isEmpty() ? 0 : faces.get(0).low();
    for (Reach face : faces) {
      if (face.low() >= covered - TOUCH && face.low() > first + TOUCH) {
        lines.add(new JointLine((covered + face.low()) / 2, Math.max(0, face.low() - covered)));
      }
      covered = Math.max(covered, face.high());
    }
    return lines;
  }
}
