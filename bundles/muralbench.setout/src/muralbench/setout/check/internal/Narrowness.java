// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * How narrow a piece is against its tile: the direction is sought in which least of the face is left. Between the
 * directions of the sides of both hulls the share only grows or only falls, so trying these finds the least (rotating
 * calipers). Measured across the convex hull: the legs beside a notch are not looked at one by one.
 *
 * @param key key of the piece
 * @param width width of the piece in that direction, mm
 * @param face width of the whole face in that direction, mm
 */
record Narrowness(String key, double width, double face) {
  /** Curves may be this far from their chords here, mm. */
  private static final double CHORD_ERROR = 0.01;
  private static final GeometryFactory JTS = new GeometryFactory();

  static Narrowness of(Piece piece) {
    List<Vec> left = hull(piece.outline());
    List<Vec> whole = hull(piece.face());
    List<Vec> directions = new ArrayList<>(normals(left));
    directions.addAll(normals(whole));
    Narrowness least = null;
    for (Vec direction : directions) {
      Narrowness here = new Narrowness(piece.key(), width(left, direction), width(whole, direction));
      least = least == null || here.share() < least.share() ? here : least;
    }
    return least;
  }

  /** The share of the face's width that is left, 0 to 1. */
  double share() {
    return width / face;
  }

  private static double width(List<Vec> hull, Vec direction) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Vec corner : hull) {
      double along = corner.dot(direction);
      least = Math.min(least, along);
      most = Math.max(most, along);
    }
    return most - least;
  }

  /** Across each side of a hull, length 1. */
  private static List<Vec> normals(List<Vec> hull) {
    List<Vec> normals = new ArrayList<>(hull.size());
    for (int i = 0; i < hull.size(); i++) {
      Vec side = hull.get((i + 1) % hull.size()).minus(hull.get(i));
      if (side.length() > 0) {
        normals.add(new Vec(-side.y() / side.length(), side.x() / side.length()));
      }
    }
    return normals;
  }

  private static List<Vec> hull(Contour contour) {
    Coordinate[] points = contour.points(CHORD_ERROR).stream().map(p -> new Coordinate(p.x(), p.y()))
        .toArray(Coordinate[]::new);
    List<Vec> corners = new ArrayList<>();
    for (Coordinate corner : new ConvexHull(points, JTS).getConvexHull().getCoordinates()) {
      corners.add(new Vec(corner.x, corner.y));
    }
    return corners;
  }
}
