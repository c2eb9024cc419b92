// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

/** A point of a drawing, mm. */
record Spot(double x, double y) {
  double distance(Spot other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
