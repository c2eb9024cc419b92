// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

/**
 * A straight line or an arc of a circle.
 *
 * @param bulge tangent of a quarter of the angle the arc runs through, above 0 counter-clockwise, 0 for a straight
 *     line: so in the DXF reference of AutoCAD, LWPOLYLINE group 42
 */
record Edge(Spot from, Spot to, double bulge) {
  Edge reversed() {
    return new Edge(to, from, -bulge);
  }

  Edge endingAt(Spot end) {
    return new Edge(from, end, bulge);
  }

  /** The point half-way along the arc: on the middle of the chord's normal, bulge times half the chord away. */
  Spot middle() {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    return new Spot((from.x() + to.x() + bulge * dy) / 2, (from.y() + to.y() - bulge * dx) / 2);
  }

  /** Radius of the arc: with half the chord c and the height b c over it, (c² + b² c²) / (2 b c). */
  double radius() {
    return from.distance(to) * (1 + bulge * bulge) / (4 * Math.abs(bulge));
  }
}
