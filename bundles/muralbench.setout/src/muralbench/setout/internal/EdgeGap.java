// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.setout.SetOut;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * The gap that is left free along the edges of a panel.
 *
 * @param width mm, 0 for none
 */
record EdgeGap(double width) {
  boolean isNone() {
    return !(width > 0);
  }

  /** The region less the gap. */
  Geometry inset(Geometry region) {
    return BufferOp.bufferOp(region, -width, square());
  }

  /** An opening and the gap around it; empty if the gap closes a bay of it. */
  Optional<Polygon> around(Polygon opening) {
    return BufferOp.bufferOp(opening, width, square()) instanceof Polygon polygon && polygon.getNumInteriorRing() == 0
        ? Optional.of(polygon) : Optional.empty();
  }

  private static BufferParameters square() {
    BufferParameters square = new BufferParameters(BufferParameters.DEFAULT_QUADRANT_SEGMENTS, BufferParameters.CAP_FLAT,
        BufferParameters.JOIN_MITRE, BufferParameters.DEFAULT_MITRE_LIMIT);
    square.setSimplifyFactor(0);
    return square;
  }

  /** A restorer that knows the circles that the circles among the edges become, the gap taken off on either side. */
  CurveRestorer circles(List<Contour> contours) {
    List<Arc> moved = new ArrayList<>();
    for (Contour contour : contours) {
      for (Segment segment : contour.segments()) {
        if (segment instanceof Arc arc && arc.circular()) {
          moved.add(Arc.circular(arc.centre(), arc.rx() + width, 0, 2 * Math.PI));
          if (arc.rx() > width) {
            moved.add(Arc.circular(arc.centre(), arc.rx() - width, 0, 2 * Math.PI));
          }
        }
      }
    }
    return CurveRestorer.ofCircles(moved, SetOut.CHORD_ERROR);
  }
}
