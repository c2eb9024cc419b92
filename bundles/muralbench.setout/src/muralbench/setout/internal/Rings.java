// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Between contours and the polygons of the geometry library. */
final class Rings {
  static final GeometryFactory FACTORY = new GeometryFactory();

  private Rings() {}

  /** The contour as a closed ring; curves become chords. */
  static LinearRing ring(Contour contour, double chordError) {
    List<Vec> points = contour.points(chordError);
    Coordinate[] coordinates = new Coordinate[points.size() + 1];
    for (int i = 0; i < points.size(); i++) {
      coordinates[i] = new Coordinate(points.get(i).x(), points.get(i).y());
    }
    coordinates[points.size()] = coordinates[0].copy();
    return FACTORY.createLinearRing(coordinates);
  }

  /** The area inside the contour; curves become chords. */
  static Polygon polygon(Contour contour, double chordError) {
    return FACTORY.createPolygon(ring(contour, chordError));
  }

  /** All polygons of a geometry; points and lines are left out. */
  static List<Polygon> polygons(Geometry geometry) {
    List<Polygon> polygons = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      Geometry part = geometry.getGeometryN(i);
      if (part instanceof Polygon polygon) {
        polygons.add(polygon);
      } else if (part.getNumGeometries() > 1) {
        polygons.addAll(polygons(part));
      }
    }
    return polygons;
  }

  static Vec vec(Coordinate coordinate) {
    return new Vec(coordinate.x, coordinate.y);
  }
}
