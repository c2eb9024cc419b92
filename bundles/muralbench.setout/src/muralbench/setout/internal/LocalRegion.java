// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import muralbench.setout.geometry.Box;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * A region that is cut with very many small shapes: a shape is cut with only the part of the region around it. The region
 * is quartered on demand, down to squares of a few tiles. How it is quartered follows from a box that is given, never from
 * the edges: so an edge comes out of the quartering the same to the last bit, whatever edges lie elsewhere.
 */
final class LocalRegion {
  /** Squares are not quartered any more below so many times the largest side of a shape. */
  private static final double SHAPES_ACROSS = 8;
  private static final int DEEPEST = 16;

  private final IndexedPointInAreaLocator locator;
  private final Quarter root;

  /**
   * A region to cut with.
   *
   * @param box a box around the region; a square around it is quartered
   * @param reach the largest side of a shape that will be asked for, mm
   */
  LocalRegion(Geometry region, Box box, double reach) {
    locator = new IndexedPointInAreaLocator(region);
    double side = Math.max(box.width(), box.height()) + 2 * reach;
    Envelope square = new Envelope(box.minX() - reach, box.minX() - reach + side, box.minY() - reach,
        box.minY() - reach + side);
    root = new Quarter(region, square, reach, 0);
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
    private final Quarter[] quarters = new Quarter[4];

    Quarter(Geometry part, Envelope box, double reach, int depth) {
      this.part = part;
      this.box = box;
      this.reach = reach;
      this.depth = depth;
    }

    Geometry around(Envelope shape) {
      if (depth == DEEPEST || box.getWidth() < SHAPES_ACROSS * reach) {
        return part;
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
      if (part.isEmpty() || wide.contains(part.getEnvelopeInternal())) {
        return part;
      }
      Geometry clipped = TiledRegion.overlay(part, Rings.FACTORY.toGeometry(wide), OverlayNG.INTERSECTION);
      return clipped instanceof Polygon ? clipped
          : Rings.FACTORY.createMultiPolygon(Rings.polygons(clipped).toArray(Polygon[]::new));
    }
  }
}
