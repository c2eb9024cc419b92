// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.SetOut;
import muralbench.setout.geometry.Contour;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** How much of the wall two contours both enclose. */
final class Overlap {
  private static final GeometryFactory JTS = new GeometryFactory();

  private Overlap() {}

  /** The area inside both, mm²; curves are taken as chords. */
  static double area(Contour first, Contour second) {
    if (!first.box().meets(second.box())) {
      return 0;
    }
    return OverlayNGRobust.overlay(polygon(first), polygon(second), OverlayNG.INTERSECTION).getArea();
  }

  /** The area inside a contour, with chords in the place of curves. */
  static Polygon polygon(Contour contour) {
    List<Coordinate> corners = new ArrayList<>();
    contour.points(SetOut.CHORD_ERROR).forEach(point -> corners.add(new Coordinate(point.x(), point.y())));
    corners.add(corners.get(0).copy());
    return JTS.createPolygon(corners.toArray(Coordinate[]::new));
  }
}
