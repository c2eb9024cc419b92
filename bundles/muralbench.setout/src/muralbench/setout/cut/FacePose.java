// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.Comparator;
import java.util.List;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * A piece as it is drawn on its face, the face's lower left corner at (0, 0). It lies as it hangs, up on the wall being
 * up on the drawing; but a face that hangs askew is turned, as little as can be, until its sides are level and plumb,
 * since a cut is measured from them.
 *
 * @param turn how far the piece was turned from how it hangs, degrees counter-clockwise from 0 to below 360
 * @param face the whole face
 * @param outline the edge of the piece
 * @param holes the holes in it
 */
public record FacePose(double turn, Contour face, Contour outline, List<Contour> holes) {
  /** How a piece is drawn. */
  public static FacePose of(Piece piece) {
    double degrees = Turn.full(turn(piece));
    Motion turn = Turn.by(degrees);
    Contour face = piece.face().moved(turn);
    Motion all = turn.then(Motion.shift(new Vec(-face.box().minX(), -face.box().minY())));
    return new FacePose(degrees, piece.face().moved(all), piece.outline().moved(all),
        piece.holes().stream().map(hole -> hole.moved(all)).toList());
  }

  private static double turn(Piece piece) {
    List<Segment> face = piece.face().segments();
    if (face.stream().noneMatch(Segment::straight)) {
      // A round face has no sides; a straight cut across it is drawn level or plumb.
      return Turn.level(longest(piece.outline().segments()));
    }
    return face.stream().filter(side -> !side.straight()).map(FacePose::direction)
        .max(Comparator.comparingDouble(Vec::length)).map(rim -> 180 - Turn.degrees(rim))
        .orElseGet(() -> Turn.level(longest(face)));
  }

  /** Directions of the longest straight sides. Short ones, such as chamfers, are no edges to measure from. */
  private static List<Vec> longest(List<Segment> sides) {
    List<Vec> straight = sides.stream().filter(Segment::straight).map(FacePose::direction).toList();
    double longest = straight.stream().mapToDouble(Vec::length).max().orElse(0);
    return straight.stream().filter(side -> side.length() >= longest - 4 * CutShape.TOLERANCE).toList();
  }

  private static Vec direction(Segment side) {
    return side.end().minus(side.start());
  }
}
