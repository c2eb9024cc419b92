// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import muralbench.setout.geometry.Contour;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * A region less one more hole that touches none of its edges. Made in no time, since what the region knows of its edges is
 * used again; every cell comes out the same to the last bit as from a {@link TiledRegion} with all holes.
 */
final class OpenedRegion implements CutRegion {
  private final TiledRegion region;
  private final LocalRegion hole;
  private final EdgeGrid grid;
  private final Envelope box;
  private final CurveRestorer curves;
  private final double area;
  private final List<Contour> edges;
  private final Map<Geometry, Map<Geometry, Geometry>> parts = new IdentityHashMap<>();

  /** A region; {@code curves}, {@code area} and {@code edges} are those with the hole. */
  OpenedRegion(TiledRegion region, Polygon hole, CurveRestorer curves, double area, List<Contour> edges) {
    this.region = region;
    this.hole = region.local(hole);
    this.grid = new EdgeGrid(hole, region.reach() / 2);
    this.box = hole.getEnvelopeInternal();
    this.curves = curves;
    this.area = area;
    this.edges = edges;
  }

  /** The box around the hole. */
  Envelope box() {
    return box;
  }

  /** Whether a shape with this box is not the same as without the hole. */
  boolean touches(Envelope shape) {
    return grid.meets(shape) || hole.holds(EdgeGrid.middle(shape));
  }

  /** Area of the panel less its openings, before the edge gap, mm², exact. */
  double area() {
    return area;
  }

  /** The edges of the region: outer edges counter-clockwise, holes clockwise. */
  List<Contour> edges() {
    return edges;
  }

  @Override
  public boolean edgeMeets(Envelope shape) {
    return grid.meets(shape) || region.edgeMeets(shape);
  }

  @Override
  public boolean holds(Coordinate point) {
    return region.holds(point) && !hole.holds(point);
  }

  @Override
  public Geometry around(Envelope shape) {
    Geometry part = region.around(shape);
    Geometry taken = hole.around(shape);
    return taken.isEmpty() ? part : parts.computeIfAbsent(part, p -> new IdentityHashMap<>())
        .computeIfAbsent(taken, t -> TiledRegion.overlay(part, t, OverlayNG.DIFFERENCE));
  }

  @Override
  public CurveRestorer curves() {
    return curves;
  }
}
