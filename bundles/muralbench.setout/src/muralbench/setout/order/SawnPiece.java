// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import muralbench.setout.FaceSide;
import muralbench.setout.MakingSpec;
import muralbench.setout.Piece;
import muralbench.setout.cut.FacePose;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * A cut piece of a rectangular face.
 *
 * @param face the face as the cutting list draws it
 * @param rect what has to be sawn for it
 */
record SawnPiece(Piece piece, Box face, SawnRect rect) {
  /** A side that is left over less than this is cut, and a face that is off a rectangle by less is one, mm. */
  private static final double SMALL = 0.01;
  private static final int CORNERS = 4;

  /** A piece that can be sawn by straight cuts; empty if its face is no rectangle. */
  static Optional<SawnPiece> of(Piece piece, MakingSpec making) {
    FacePose pose = FacePose.of(piece);
    Box face = pose.face().box();
    if (!isRectangle(pose.face().segments(), face)) {
      return Optional.empty();
    }
    Box box = pose.outline().box();
    int factory = 0;
    for (FaceSide side : making.factoryEdges()) {
      factory |= uncut(pose.outline().segments(), face, side) ? 1 << side.ordinal() : 0;
    }
    return Optional.of(new SawnPiece(piece, face,
        new SawnRect(span(box.width(), face.width(), factory, Set.of(FaceSide.LEFT, FaceSide.RIGHT)),
            span(box.height(), face.height(), factory, Set.of(FaceSide.BOTTOM, FaceSide.TOP)), factory)));
  }

  /** A piece that keeps two opposite edges is as wide as its face, to the last digit. */
  private static double span(double piece, double face, int factory, Set<FaceSide> sides) {
    boolean both = sides.stream().allMatch(side -> (factory & 1 << side.ordinal()) != 0);
    return MakingUp.round(both ? face : piece);
  }

  private static boolean isRectangle(List<Segment> sides, Box box) {
    return sides.size() == CORNERS && sides.stream().allMatch(side -> side.straight() && isCorner(side.start(), box));
  }

  private static boolean isCorner(Vec point, Box box) {
    return Math.min(point.x() - box.minX(), box.maxX() - point.x()) < SMALL
        && Math.min(point.y() - box.minY(), box.maxY() - point.y()) < SMALL;
  }

  private static boolean uncut(List<Segment> edge, Box face, FaceSide side) {
    return edge.stream().filter(Segment::straight)
        .filter(segment -> away(segment.start(), face, side) < SMALL && away(segment.end(), face, side) < SMALL)
        .mapToDouble(segment -> segment.start().distance(segment.end())).sum() > SMALL;
  }

  private static double away(Vec point, Box face, FaceSide side) {
    return switch (side) {
      case BOTTOM -> point.y() - face.minY();
      case RIGHT -> face.maxX() - point.x();
      case TOP -> face.maxY() - point.y();
      case LEFT -> point.x() - face.minX();
    };
  }
}
