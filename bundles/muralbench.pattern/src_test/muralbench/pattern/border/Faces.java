// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import java.util.List;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Contours as polygons of JTS, for checks by another geometry. */
final class Faces {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private Faces() {}

  static Polygon of(Contour contour) {
    List<Vec> points = contour.points(1e-4);
    Coordinate[] ring = new Coordinate[points.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Vec point = points.get(i % points.size());
      ring[i] = new Coordinate(point.x(), point.y());
    }
    return GEOMETRY.createPolygon(ring);
  }

  static List<Polygon> of(List<BorderTile> tiles) {
    return tiles.stream().map(tile -> of(tile.face())).toList();
  }

  static double area(List<BorderTile> tiles) {
    return tiles.stream().mapToDouble(BorderTile::area).sum();
  }
}
