// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * What has to be measured to mark out a cut: corners, drilled holes and curves. All from the lower left corner of the
 * uncut face, mm.
 *
 * @param datum the corner of the face that measures run from
 * @param points corners of the piece and of its holes, middles of drilled holes, and the extremes of curves
 * @param drilled circular holes
 * @param curves curved edges, without the drilled holes
 */
record CutGeometry(Datum datum, List<Vec> points, List<Arc> drilled, List<Segment> curves) {
  private static final double SAME = 1e-6;

  /** The measures of a shape. */
  static CutGeometry of(CutGroup group) {
    List<Vec> points = new ArrayList<>();
    List<Arc> drilled = new ArrayList<>();
    List<Segment> curves = new ArrayList<>();
    edge(group.outline(), points, curves);
    for (Contour hole : group.holes()) {
      Optional<Arc> circle = circle(hole);
      if (circle.isPresent()) {
        drilled.add(circle.get());
        points.add(circle.get().centre());
      } else {
        edge(hole, points, curves);
      }
    }
    return new CutGeometry(Datum.of(group), points, drilled, curves);
  }

  private static void edge(Contour edge, List<Vec> points, List<Segment> curves) {
    for (Segment segment : edge.segments()) {
      points.add(segment.start());
      if (!segment.straight()) {
        curves.add(segment);
        extremes(segment, points);
      }
    }
  }

  /** Where a curve reaches beyond its ends: the crown of an arch is measured too. */
  private static void extremes(Segment curve, List<Vec> points) {
    Box ends = Box.of(curve.start(), curve.end());
    Box box = curve.box();
    Vec middle = curve.at(0.5);
    add(points, box.minX() < ends.minX() - SAME, new Vec(box.minX(), middle.y()));
    add(points, box.maxX() > ends.maxX() + SAME, new Vec(box.maxX(), middle.y()));
    add(points, box.minY() < ends.minY() - SAME, new Vec(middle.x(), box.minY()));
    add(points, box.maxY() > ends.maxY() + SAME, new Vec(middle.x(), box.maxY()));
  }

  private static void add(List<Vec> points, boolean beyond, Vec point) {
    if (beyond) {
      points.add(point);
    }
  }

  private static Optional<Arc> circle(Contour hole) {
    Arc first = hole.segments().get(0) instanceof Arc arc && arc.circular() ? arc : null;
    boolean same = first != null && hole.segments().stream().allMatch(segment -> segment instanceof Arc arc
        && arc.circular() && arc.centre().distance(first.centre()) < SAME && Math.abs(arc.rx() - first.rx()) < SAME);
    return same ? Optional.of(first) : Optional.empty();
  }
}
