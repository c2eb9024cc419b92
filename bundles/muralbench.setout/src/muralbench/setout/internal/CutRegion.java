// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** A region that cells are cut with. */
interface CutRegion {
  /** Whether an edge of the region meets the box; touching counts. */
  boolean edgeMeets(Envelope box);

  /** Whether a point is inside the region or on its edge. */
  boolean holds(Coordinate point);

  /** The part of the region around a shape with this box; empty if there is none. */
  Geometry around(Envelope box);

  /** Gives pieces cut from the region their curves back. */
  CurveRestorer curves();
}
