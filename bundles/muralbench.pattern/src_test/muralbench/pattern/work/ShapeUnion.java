// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.work;

import java.util.List;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** The area that pieces cover together. */
final class ShapeUnion {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private ShapeUnion() {}

  static double area(List<Piece> pieces) {
    List<Polygon> shapes = pieces.stream().map(ShapeUnion::polygon).toList();
    Geometry all = UnaryUnionOp.union(shapes);
    return all.getArea();
  }

  private static Polygon polygon(Piece piece) {
    return FACTORY.createPolygon(ring(piece.outline()),
        piece.holes().stream().map(ShapeUnion::ring).toArray(LinearRing[]::new));
  }

  private static LinearRing ring(Contour contour) {
    List<Vec> points = contour.points(0.0005);
    Coordinate[] ring = new Coordinate[points.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Vec point = points.get(i % points.size());
      ring[i] = new Coordinate(point.x(), point.y());
    }
    return FACTORY.createLinearRing(ring);
  }
}
