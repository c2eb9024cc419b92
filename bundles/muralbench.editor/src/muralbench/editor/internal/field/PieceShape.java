// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.field;

import java.util.List;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/**
 * A piece as it is painted and hit: curves as chords.
 *
 * @param piece the piece
 * @param box its box
 * @param edge its corners
 * @param holes the corners of its holes
 */
public record PieceShape(Piece piece, Box box, List<Vec> edge, List<List<Vec>> holes) {
  private static final double SAME = 1e-6;

  /** Whether the piece fills its box, so that it can be painted as a plain rectangle. */
  public boolean upright() {
    return edge.size() == 4 && holes.isEmpty()
        && edge.stream().allMatch(at -> onEdge(at.x(), box.minX(), box.maxX()))
        && edge.stream().allMatch(at -> onEdge(at.y(), box.minY(), box.maxY()));
  }

  private static boolean onEdge(double value, double low, double high) {
    return Math.abs(value - low) < SAME || Math.abs(value - high) < SAME;
  }

  /** Whether a place lies on the piece. */
  public boolean holds(double x, double y) {
    return inside(edge, x, y) && holes.stream().noneMatch(hole -> inside(hole, x, y));
  }

  /** Counts the edges a ray to the right crosses. */
  private static boolean inside(List<Vec> corners, double x, double y) {
    boolean inside = false;
    Vec a = corners.get(corners.size() - 1);
    for (Vec b : corners) {
      if (a.y() > y != b.y() > y && x < a.x() + (y - a.y()) * (b.x() - a.x()) / (b.y() - a.y())) {
        inside = !inside;
      }
      a = b;
    }
    return inside;
  }
}
