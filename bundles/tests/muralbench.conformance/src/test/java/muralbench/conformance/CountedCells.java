// SPDX-License-Identifier: EPL-2.0
package muralbench.conformance;

import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import java.util.TreeMap;
import muralbench.setout.PanelSpec;

/**
 * What a panel's tiles come to when they are cut by {@code java.awt.geom.Area}, the polygon engine of the JDK, which
 * shares no code and no author with the engine of the set-out.
 */
final class CountedCells {
  private final Map<String, Area> faces = new TreeMap<>();
  private final double width;
  private final double height;
  private final double joint;
  private final double offset;
  private double joints;

  private CountedCells(PanelSpec panel) {
    width = panel.tile().width();
    height = panel.tile().height();
    joint = panel.joint();
    offset = panel.bond().offset();
  }

  /**
   * Cuts a region.
   *
   * @param region in coordinates in which a face starts at (0, 0) and courses run along x
   */
  static CountedCells of(PanelSpec panel, Area region) {
    CountedCells counted = new CountedCells(panel);
    Rectangle2D box = region.getBounds2D();
    double rise = counted.height + counted.joint;
    counted.courses(region, (int) Math.floor(box.getMinY() / rise) - 1, (int) Math.ceil(box.getMaxY() / rise) + 1);
    return counted;
  }

  /** What is left of each face that is touched at all, by {@link #name}. */
  Map<String, Area> faces() {
    return faces;
  }

  /** The area of the region that is joint, mm². */
  double joints() {
    return joints;
  }

  static String name(long course, long position) {
    return course + "/" + position;
  }

  /** How far a course is shifted against course 0, not reduced to one module. */
  double shift(long course) {
    return course * offset * (width + joint);
  }

  /** Halves the stack of courses until one is left: cutting small parts out of small regions is fast. */
  private void courses(Area region, int from, int to) {
    if (region.isEmpty()) {
      return;
    }
    double rise = height + joint;
    if (to - from == 1) {
      Rectangle2D box = region.getBounds2D();
      double module = width + joint;
      positions(region, from, (int) Math.floor((box.getMinX() - shift(from)) / module) - 1,
          (int) Math.ceil((box.getMaxX() - shift(from)) / module) + 1);
      return;
    }
    int middle = (from + to) >> 1;
    courses(part(region, -1e6, from * rise, 2e6, (middle - from) * rise), from, middle);
    courses(part(region, -1e6, middle * rise, 2e6, (to - middle) * rise), middle, to);
  }

  private void positions(Area region, int course, int from, int to) {
    if (region.isEmpty()) {
      return;
    }
    double module = width + joint;
    double rise = height + joint;
    double left = from * module + shift(course);
    if (to - from == 1) {
      Area face = part(region, left, course * rise, width, height);
      joints += Shapes.area(region) - Shapes.area(face);
      if (!face.isEmpty()) {
        faces.put(name(course, from), face);
      }
      return;
    }
    int middle = (from + to) >> 1;
    positions(part(region, left, course * rise, (middle - from) * module, rise), course, from, middle);
    positions(part(region, middle * module + shift(course), course * rise, (to - middle) * module, rise), course,
        middle, to);
  }

  private static Area part(Area region, double x, double y, double width, double height) {
    Area part = new Area(new Rectangle2D.Double(x, y, width, height));
    part.intersect(region);
    return part;
  }
}
