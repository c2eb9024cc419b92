// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.List;
import java.util.stream.Stream;
import muralbench.setout.Piece;
import muralbench.setout.TileSpec;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * A piece as it lies on its face, the face's lower left corner at (0, 0). Of the turns that lay the face on itself the
 * one is taken that has the longest uncut side of the piece at the bottom, so that one shape is always drawn one way.
 *
 * @param face the whole face
 * @param outline the edge of the piece
 * @param holes the holes in it
 */
record FacePose(Contour face, Contour outline, List<Contour> holes) {
  private static final double CLOSE = CutShape.TOLERANCE;

  static FacePose of(Piece piece, CutShape shape, TileSpec tile) {
    double upright = upright(piece.cell().face().box(), tile);
    FacePose best = null;
    for (double turn : shape.faceTurns(sideTurns(piece))) {
      FacePose pose = turned(piece, turn + upright);
      if (best == null || pose.before(best)) {
        best = pose;
      }
    }
    return best == null ? turned(piece, upright) : best;
  }

  /** A bond may lay oblong faces across; on the list every tile stands as its kind says. */
  private static double upright(Box face, TileSpec tile) {
    boolean lies = Math.abs(face.width() - tile.height()) < CLOSE && Math.abs(face.height() - tile.width()) < CLOSE;
    return lies && Math.abs(tile.width() - tile.height()) >= CLOSE ? Math.PI / 2 : 0;
  }

  /** Turns that lay a straight side of the piece flat below it; of use for round faces only. */
  private static List<Double> sideTurns(Piece piece) {
    if (piece.cell().face().segments().stream().anyMatch(Segment::straight)) {
      return List.of();
    }
    Motion back = piece.placed().inverse();
    return piece.outline().moved(back).segments().stream().filter(Segment::straight).map(FacePose::direction)
        .map(direction -> -Math.atan2(direction.y(), direction.x())).toList();
  }

  private static FacePose turned(Piece piece, double radians) {
    Motion turn = Turn.by(radians);
    Contour face = piece.cell().face().moved(turn);
    Motion home = Motion.shift(new Vec(-face.box().minX(), -face.box().minY()));
    Motion all = piece.placed().inverse().then(turn).then(home);
    return new FacePose(face.moved(home), piece.outline().moved(all),
        piece.holes().stream().map(hole -> hole.moved(all)).toList());
  }

  private boolean before(FacePose other) {
    double[] mine = merits();
    double[] theirs = other.merits();
    for (int i = 0; i < mine.length; i++) {
      if (Math.abs(mine[i] - theirs[i]) > CLOSE) {
        return mine[i] > theirs[i];
      }
    }
    return false;
  }

  /** What makes a pose the better one, the first first, more is better. */
  private double[] merits() {
    Vec middle = Ring.of(outline).centroid();
    return new double[] {onBottom(), flat().mapToDouble(Segment::length).max().orElse(0), -middle.y(), -middle.x()};
  }

  private double onBottom() {
    return flat().filter(side -> Math.abs(side.start().y()) < CLOSE).mapToDouble(Segment::length).sum();
  }

  /** The straight sides that run to the right, with the piece above them. */
  private Stream<Segment> flat() {
    return outline.segments().stream().filter(Segment::straight)
        .filter(side -> Math.abs(direction(side).y()) < CLOSE && direction(side).x() > 0);
  }

  private static Vec direction(Segment side) {
    return side.end().minus(side.start());
  }
}
