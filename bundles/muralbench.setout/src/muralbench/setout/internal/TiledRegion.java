// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.prep.PreparedPolygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** The part of a panel that is tiled: inside its outline, outside its openings, less the edge gap. */
final class TiledRegion implements CutRegion {
  /** A hole nearer to an edge than this is not taken as one that touches nothing, mm. */
  private static final double CLEAR = 0.01;

  private final PanelSpec panel;
  private final Box box;
  private final Geometry geometry;
  private final CurveRestorer curves;
  private final List<Contour> edges;
  private final Bounds bounds;
  private final LocalRegion local;
  private final EdgeGrid grid;
  private PreparedPolygon prepared;
  private IndexedFacetDistance distance;

  /**
   * The edges before the edge gap.
   *
   * @param joined those of the outline and the openings that touch it or each other
   * @param alone those of the openings that touch nothing, clockwise
   * @param indices where these openings stand among the openings of the panel, in growing order
   */
  private record Bounds(List<Contour> joined, List<Contour> alone, List<Integer> indices) {
    List<Contour> all() {
      List<Contour> all = new ArrayList<>(joined);
      all.addAll(alone);
      return all;
    }

    /** With one more opening that touches nothing, put before the openings from an index on. */
    List<Contour> with(Contour hole, int index) {
      List<Contour> all = all();
      all.add(joined.size() + (int) indices.stream().filter(other -> other < index).count(), hole);
      return all;
    }

    static double area(List<Contour> edges) {
      return edges.stream().mapToDouble(Contour::signedArea).sum();
    }
  }

  private TiledRegion(PanelSpec panel, Box box, Geometry geometry, CurveRestorer curves, List<Contour> edges,
      Bounds bounds) {
    this.panel = panel;
    this.box = box;
    this.geometry = geometry;
    this.curves = curves;
    this.edges = edges;
    this.bounds = bounds;
    local = local(geometry);
    grid = new EdgeGrid(geometry, reach() / 2);
  }

  @Override
  public boolean edgeMeets(Envelope box) {
    return grid.meets(box);
  }

  @Override
  public boolean holds(Coordinate point) {
    return local.holds(point);
  }

  @Override
  public Geometry around(Envelope box) {
    return local.around(box);
  }

  @Override
  public CurveRestorer curves() {
    return curves;
  }

  /** Area of the panel less its openings, before the edge gap, mm², exact. */
  double area() {
    return Bounds.area(bounds.all());
  }

  /** The edges of the region: outer edges counter-clockwise, holes clockwise. */
  List<Contour> edges() {
    return edges;
  }

  /** The smallest upright rectangle around the region after a movement. */
  Box box(Motion motion) {
    return edges.stream().map(edge -> edge.moved(motion).box()).reduce(Box::and).orElseThrow();
  }

  /** The largest side of a shape that cuts or is cut, mm. */
  double reach() {
    return Math.hypot(panel.tile().width(), panel.tile().height());
  }

  /** Another region in the same place, quartered like this one. */
  LocalRegion local(Geometry region) {
    return new LocalRegion(region, box, reach());
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
    List<Polygon> holes = new ArrayList<>();
    List<Polygon> touching = new ArrayList<>();
    for (OpeningSpec opening : panel.openings()) {
      Polygon hole = checked(opening.outline(), opening.id(), units, texts);
      if (!inside.containsProperly(hole)) {
        Overhang.refuse(opening, hole, panel, outline, units);
        touching.add(hole);
      }
      holes.add(hole);
    }
    List<Integer> alone = IntStream.range(0, holes.size()).filter(i -> !touching.contains(holes.get(i))
        && holes.stream().allMatch(other -> other == holes.get(i) || !other.intersects(holes.get(i)))).boxed().toList();
    TiledRegion region = of(panel, outline, holes, alone);
    if (region.edges.isEmpty()) {
      throw new InputException(panel.id(), texts.text("panel.empty"), texts.text("panel.empty.remedy"));
    }
    return region;
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
    Box box = edges.stream().map(Contour::box).reduce(Box::and).orElseThrow();
    return new TiledRegion(panel, box, UnaryUnionOp.union(shapes), CurveRestorer.of(edges, SetOut.CHORD_ERROR), edges,
        new Bounds(parts.stream().flatMap(part -> part.bounds.all().stream()).toList(), List.of(), List.of()));
  }

  /**
   * The part of this region inside an outline.
   *
   * @throws InputException if there is nothing
   */
  TiledRegion within(Contour outline) throws InputException {
    Geometry part = overlay(geometry, Rings.polygon(outline, SetOut.CHORD_ERROR), OverlayNG.INTERSECTION);
    CurveRestorer known = curves.and(outline);
    List<Contour> inside = sorted(edges(part, known));
    if (inside.isEmpty()) {
      Messages texts = Messages.of(TiledRegion.class);
      throw new InputException(panel.id(), texts.text("field.empty"), texts.text("field.empty.remedy"));
    }
    return new TiledRegion(panel, box, part, known, inside, new Bounds(inside, List.of(), List.of()));
  }

  private static Geometry union(List<Contour> edges, boolean outer) {
    List<Polygon> shapes = edges.stream().filter(edge -> edge.signedArea() > 0 == outer)
        .map(edge -> Rings.polygon(edge.counterClockwise(), SetOut.CHORD_ERROR)).toList();
    return shapes.isEmpty() ? Rings.FACTORY.createPolygon() : UnaryUnionOp.union(shapes);
  }

  /** Openings that stand alone are simply holes: they need no overlay, and their edges are those that were given. */
  private static TiledRegion of(PanelSpec panel, Polygon outline, List<Polygon> holes, List<Integer> alone) {
    List<Contour> contours = contours(panel);
    CurveRestorer curves = CurveRestorer.of(contours, SetOut.CHORD_ERROR);
    List<Polygon> others = IntStream.range(0, holes.size()).filter(i -> !alone.contains(i)).mapToObj(holes::get).toList();
    Geometry joined = others.isEmpty() ? outline
        : overlay(outline, UnaryUnionOp.union(others), OverlayNG.DIFFERENCE);
    Bounds bounds = new Bounds(others.isEmpty() ? contours.subList(0, 1) : edges(joined, curves),
        alone.stream().map(i -> contours.get(i + 1)).toList(), alone);
    Geometry whole = Rings.withHoles(joined, alone.stream().map(holes::get).toList());
    EdgeGap gap = new EdgeGap(panel.edgeGap());
    if (gap.isNone()) {
      return new TiledRegion(panel, panel.outline().box(), whole, curves, bounds.all(), bounds);
    }
    CurveRestorer circles = gap.circles(contours);
    Geometry inset = gap.inset(whole);
    return new TiledRegion(panel, panel.outline().box(), inset, circles, sorted(edges(inset, circles)), bounds);
  }

  /** The outline counter-clockwise, then the openings clockwise. */
  private static List<Contour> contours(PanelSpec panel) {
    List<Contour> contours = new ArrayList<>(List.of(panel.outline().counterClockwise()));
    panel.openings().forEach(opening -> contours.add(hole(opening.outline())));
    return contours;
  }

  private static Contour hole(Contour outline) {
    return outline.counterClockwise().reversed();
  }

  /**
   * This region with one more opening.
   *
   * @param opened the panel with it
   * @param index where it stands among the openings
   * @return empty if the opening is not sound, or touches or almost touches an edge of the region
   */
  Optional<OpenedRegion> opened(PanelSpec opened, int index) {
    Contour outline = hole(opened.openings().get(index).outline());
    Polygon hole = Rings.polygon(opened.openings().get(index).outline(), SetOut.CHORD_ERROR);
    if (!hole.isValid() || hole.getArea() <= SetOut.DUST_AREA) {
      return Optional.empty();
    }
    List<Contour> whole = bounds.with(outline, index);
    EdgeGap gap = new EdgeGap(panel.edgeGap());
    if (gap.isNone()) {
      return Optional.of(hole).filter(this::clear)
          .map(clear -> new OpenedRegion(this, clear, curves.and(outline), Bounds.area(whole), whole));
    }
    CurveRestorer circles = gap.circles(contours(opened));
    return gap.around(hole).filter(this::clear).map(wide -> {
      List<Contour> inset = new ArrayList<>(edges);
      inset.add(circles.restore(wide.getExteriorRing().getCoordinates()).reversed());
      return new OpenedRegion(this, wide, circles, Bounds.area(whole), sorted(inset));
    });
  }

  /** Whether a hole lies inside the region, clear of its edges. */
  private boolean clear(Polygon hole) {
    Envelope wide = new Envelope(hole.getEnvelopeInternal());
    wide.expandBy(CLEAR);
    if (!grid.meets(wide)) {
      return local.holds(EdgeGrid.middle(wide));
    }
    if (prepared == null) {
      prepared = new PreparedPolygon((Polygonal) geometry);
      distance = new IndexedFacetDistance(geometry);
    }
    return prepared.containsProperly(hole) && !distance.isWithinDistance(hole, CLEAR);
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

  /** In an order that does not come from the geometry library. */
  private static List<Contour> sorted(List<Contour> edges) {
    return edges.stream().sorted(Comparator.comparing(Contour::box, Box.FROM_LEFT)).toList();
  }
}
