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

  /** A region of one or more polygons less holes, each of which lies inside one of them and touches nothing. */
  static Geometry withHoles(Geometry region, List<Polygon> holes) {
    if (holes.isEmpty()) {
      return region;
    }
    List<Polygon> parts = polygons(region);
    List<Polygon> cut = new ArrayList<>();
    for (Polygon part : parts) {
      List<LinearRing> rings = new ArrayList<>();
      for (int i = 0; i < part.getNumInteriorRing(); i++) {
        rings.add(part.getInteriorRingN(i));
      }
      holes.stream().filter(hole -> parts.size() == 1 || part.intersects(hole))
          .forEach(hole -> rings.add(hole.getExteriorRing()));
      cut.add(FACTORY.createPolygon(part.getExteriorRing(), rings.toArray(LinearRing[]::new)));
    }
    return cut.size() == 1 ? cut.get(0) : FACTORY.createMultiPolygon(cut.toArray(Polygon[]::new));
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
