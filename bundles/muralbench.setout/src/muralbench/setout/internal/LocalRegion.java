// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * A region that is cut with very many small shapes. It answers at once for a shape that no edge of the region comes near,
 * and cuts the others with only the part of the region around them: the region is quartered on demand until a quarter
 * holds few corners.
 */
final class LocalRegion {
  private static final int FEW_CORNERS = 48;
  private static final int DEEPEST = 16;

  private final IndexedPointInAreaLocator locator;
  private final Quarter root;

  /**
   * A region to cut with.
   *
   * @param reach the largest side of a shape that will be asked for, mm
   */
  LocalRegion(Geometry region, double reach) {
    locator = new IndexedPointInAreaLocator(region);
    Envelope box = new Envelope(region.getEnvelopeInternal());
    box.expandBy(reach);
    root = new Quarter(region, box, reach, 0);
  }

  /** Whether a point is inside the region or on its edge. */
  boolean holds(Coordinate point) {
    return locator.locate(point) != Location.EXTERIOR;
  }

  /** The part of the region around a shape with this box; empty if there is none, the box itself if it is all inside. */
  Geometry around(Envelope box) {
    return root.around(box);
  }

  private static final class Quarter {
    private final Geometry part;
    private final Envelope box;
    private final double reach;
    private final int depth;
    private Quarter[] quarters;

    Quarter(Geometry part, Envelope box, double reach, int depth) {
      this.part = part;
      this.box = box;
      this.reach = reach;
      this.depth = depth;
    }

    Geometry around(Envelope shape) {
      if (depth == DEEPEST || part.getNumPoints() <= FEW_CORNERS || box.getWidth() < 2 * reach) {
        return part;
      }
      if (quarters == null) {
        quarters = new Quarter[4];
      }
      double midX = (box.getMinX() + box.getMaxX()) / 2;
      double midY = (box.getMinY() + box.getMaxY()) / 2;
      boolean right = shape.getMinX() + shape.getMaxX() > 2 * midX;
      boolean upper = shape.getMinY() + shape.getMaxY() > 2 * midY;
      int which = (right ? 1 : 0) + (upper ? 2 : 0);
      if (quarters[which] == null) {
        Envelope quarter = new Envelope(right ? midX : box.getMinX(), right ? box.getMaxX() : midX,
            upper ? midY : box.getMinY(), upper ? box.getMaxY() : midY);
        quarters[which] = new Quarter(clip(quarter), quarter, reach, depth + 1);
      }
      return quarters[which].around(shape);
    }

    private Geometry clip(Envelope quarter) {
      // A shape belongs to the quarter of its middle and may stick out by half its side.
      Envelope wide = new Envelope(quarter);
      wide.expandBy(reach);
      if (wide.contains(part.getEnvelopeInternal())) {
        return part;
      }
      Geometry clipped = TiledRegion.overlay(part, Rings.FACTORY.toGeometry(wide), OverlayNG.INTERSECTION);
      return clipped instanceof Polygon ? clipped
          : Rings.FACTORY.createMultiPolygon(Rings.polygons(clipped).toArray(Polygon[]::new));
    }
  }
}
