// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Segment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedPolygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** The part of a panel that is tiled: inside its outline, outside its openings, less the edge gap. */
final class TiledRegion {
  private final CurveRestorer curves;
  private final double area;
  private final List<Contour> edges;
  private final LocalRegion local;
  private final EdgeGrid grid;

  private TiledRegion(Geometry geometry, CurveRestorer curves, double area, List<Contour> edges, double reach) {
    this.curves = curves;
    this.area = area;
    this.edges = edges;
    local = new LocalRegion(geometry, reach);
    grid = new EdgeGrid(geometry, reach / 2);
  }

  /** The region, ready to be cut with shapes about the size of the tile. */
  LocalRegion local() {
    return local;
  }

  /** Where the edges of the region are. */
  EdgeGrid grid() {
    return grid;
  }

  /** Gives pieces cut from the region their curves back. */
  CurveRestorer curves() {
    return curves;
  }

  /** Area of the panel less its openings, before the edge gap, mm², exact. */
  double area() {
    return area;
  }

  /** The edges of the region: outer edges counter-clockwise, holes clockwise. */
  List<Contour> edges() {
    return edges;
  }

  /** The smallest upright rectangle around the region after a movement. */
  Box box(Motion motion) {
    return edges.stream().map(edge -> edge.moved(motion).box()).reduce(Box::and).orElseThrow();
  }

  /**
   * The region of a panel.
   *
   * @throws InputException if the outline or an opening crosses itself, an opening reaches outside the panel, or nothing
   *     is left
   */
  static TiledRegion of(PanelSpec panel, LengthUnit units) throws InputException {
    Messages texts = Messages.of(TiledRegion.class);
    Polygon outline = checked(panel.outline(), panel.id(), units, texts);
    PreparedPolygon inside = new PreparedPolygon(outline);
    List<Contour> contours = new ArrayList<>(List.of(panel.outline().counterClockwise()));
    List<Polygon> openings = new ArrayList<>();
    boolean apart = true;
    for (OpeningSpec opening : panel.openings()) {
      Polygon hole = checked(opening.outline(), opening.id(), units, texts);
      boolean within = inside.containsProperly(hole);
      if (!within) {
        Overhang.refuse(opening, hole, panel, outline, units);
      }
      apart &= within && openings.stream().noneMatch(hole::intersects);
      openings.add(hole);
      contours.add(opening.outline().counterClockwise().reversed());
    }
    CurveRestorer curves = CurveRestorer.of(contours, SetOut.CHORD_ERROR);
    // Openings that touch nothing are simply holes: no overlay is needed, and the edges are those that were given.
    Geometry region = apart ? withHoles(outline, openings)
        : overlay(outline, UnaryUnionOp.union(openings), OverlayNG.DIFFERENCE);
    List<Contour> edges = apart ? contours : edges(region, curves);
    double area = edges.stream().mapToDouble(Contour::signedArea).sum();
    if (panel.edgeGap() > 0) {
      region = inset(region, panel.edgeGap());
      curves = CurveRestorer.ofCircles(inset(contours, panel.edgeGap()), SetOut.CHORD_ERROR);
      edges = edges(region, curves);
    }
    if (edges.isEmpty()) {
      throw new InputException(panel.id(), texts.text("panel.empty"), texts.text("panel.empty.remedy"));
    }
    return new TiledRegion(region, curves, area, edges, Math.hypot(panel.tile().width(), panel.tile().height()));
  }

  /**
   * Several regions as one; what they have in common or where they touch is no edge any more.
   *
   * @param panel the panel with the tile it is laid in
   */
  static TiledRegion together(PanelSpec panel, List<TiledRegion> parts) {
    List<Contour> edges = parts.stream().flatMap(part -> part.edges().stream()).toList();
    List<Geometry> shapes = new ArrayList<>();
    for (TiledRegion part : parts) {
      shapes.add(overlay(union(part.edges(), true), union(part.edges(), false), OverlayNG.DIFFERENCE));
    }
    return new TiledRegion(UnaryUnionOp.union(shapes), CurveRestorer.of(edges, SetOut.CHORD_ERROR),
        parts.stream().mapToDouble(TiledRegion::area).sum(), edges,
        Math.hypot(panel.tile().width(), panel.tile().height()));
  }

  private static Geometry union(List<Contour> edges, boolean outer) {
    List<Polygon> shapes = edges.stream().filter(edge -> edge.signedArea() > 0 == outer)
        .map(edge -> Rings.polygon(edge.counterClockwise(), SetOut.CHORD_ERROR)).toList();
    return shapes.isEmpty() ? Rings.FACTORY.createPolygon() : UnaryUnionOp.union(shapes);
  }

  private static Polygon withHoles(Polygon outline, List<Polygon> openings) {
    return Rings.FACTORY.createPolygon(outline.getExteriorRing(),
        openings.stream().map(Polygon::getExteriorRing).toArray(LinearRing[]::new));
  }

  private static Polygon checked(Contour contour, String id, LengthUnit units, Messages texts) throws InputException {
    Polygon polygon = Rings.polygon(contour, SetOut.CHORD_ERROR);
    TopologyValidationError error = new IsValidOp(polygon).getValidationError();
    if (error != null) {
      Coordinate at = error.getCoordinate();
      throw new InputException(id,
          texts.text("outline.crosses", "x", LengthText.shown(at.x, units), "y", LengthText.shown(at.y, units)),
          texts.text("outline.crosses.remedy"));
    }
    if (polygon.getArea() <= SetOut.DUST_AREA) {
      throw new InputException(id, texts.text("outline.flat"), texts.text("outline.flat.remedy"));
    }
    return polygon;
  }

  static Geometry overlay(Geometry a, Geometry b, int operation) {
    return OverlayNGRobust.overlay(a, b, operation);
  }

  private static List<Contour> edges(Geometry region, CurveRestorer curves) {
    List<Contour> edges = new ArrayList<>();
    for (Polygon polygon : Rings.polygons(region)) {
      if (polygon.getArea() <= SetOut.DUST_AREA) {
        continue;
      }
      edges.add(curves.restore(polygon.getExteriorRing().getCoordinates()));
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        edges.add(curves.restore(polygon.getInteriorRingN(i).getCoordinates()).reversed());
      }
    }
    return edges;
  }

  private static Geometry inset(Geometry region, double gap) {
    BufferParameters square = new BufferParameters(BufferParameters.DEFAULT_QUADRANT_SEGMENTS, BufferParameters.CAP_FLAT,
        BufferParameters.JOIN_MITRE, BufferParameters.DEFAULT_MITRE_LIMIT);
    square.setSimplifyFactor(0);
    return BufferOp.bufferOp(region, -gap, square);
  }

  /** The circles that the circles among the edges become when the gap is taken off on either side. */
  private static List<Arc> inset(List<Contour> contours, double gap) {
    List<Arc> moved = new ArrayList<>();
    for (Contour contour : contours) {
      for (Segment segment : contour.segments()) {
        if (segment instanceof Arc arc && arc.circular()) {
          moved.add(Arc.circular(arc.centre(), arc.rx() + gap, 0, 2 * Math.PI));
          if (arc.rx() > gap) {
            moved.add(Arc.circular(arc.centre(), arc.rx() - gap, 0, 2 * Math.PI));
          }
        }
      }
    }
    return moved;
  }
}
