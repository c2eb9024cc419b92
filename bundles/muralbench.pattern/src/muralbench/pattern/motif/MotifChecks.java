// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Checks a drawing region by region and brings the contours the usual way round. */
final class MotifChecks {
  private static final Messages MESSAGES = Messages.of(Motif.class);
  private static final GeometryFactory FACTORY = new GeometryFactory();
  /** Chords are this near to their curves, as a share of the tile's longer side. */
  private static final double CHORD = 1e-5;

  private record Checked(Region region, Geometry shape) {}

  private final String motif;
  private final double width;
  private final double height;
  private final double unit;
  private final List<Checked> all = new ArrayList<>();

  /** Checks of a strip so wide and high; the unit is the longer side of one of its tiles. */
  MotifChecks(String motif, double width, double height, double unit) {
    this.motif = motif;
    this.width = width;
    this.height = height;
    this.unit = unit;
  }

  void size(double tileWidth, double tileHeight, int tiles) throws InputException {
    boolean finite = Double.isFinite(tileWidth) && Double.isFinite(tileHeight);
    if (!finite || tileWidth <= 0 || tileHeight <= 0 || tiles < 1) {
      throw error("motif.size", "motif.size.remedy");
    }
  }

  void ground(String ground) throws InputException {
    if (ground.isBlank()) {
      throw error("motif.ground", "motif.ground.remedy");
    }
  }

  Region region(Region region) throws InputException {
    within("motif.leaves", region.name(), region.box());
    List<Polygon> outlines = new ArrayList<>();
    for (Contour contour : region.contours()) {
      outlines.add(outline(region, contour));
    }
    Region usual = usual(region, outlines);
    // The even-odd rule: each contour turns what it holds from filled to not filled and back.
    Geometry shape = outlines.get(0);
    for (Polygon outline : outlines.subList(1, outlines.size())) {
      shape = OverlayNGRobust.overlay(shape, outline, OverlayNG.SYMDIFFERENCE);
    }
    all.add(new Checked(usual, shape));
    return usual;
  }

  void line(DrawnLine line) throws InputException {
    within("motif.line-leaves", line.name(),
        line.segments().stream().map(Segment::box).reduce(Box::and).orElseThrow());
  }

  private void within(String key, String name, Box box) throws InputException {
    double slack = Boundaries.SNAP * unit;
    if (!new Box(0, 0, width, height).grown(slack).holds(box)) {
      double out = Math.max(Math.max(-box.minX(), -box.minY()), Math.max(box.maxX() - width, box.maxY() - height));
      throw error(key, key + ".remedy", "name", name, "out", number(out), "width", number(width), "height",
          number(height));
    }
  }

  private Polygon outline(Region region, Contour contour) throws InputException {
    List<Coordinate> corners = new ArrayList<>();
    contour.points(CHORD * unit).forEach(point -> corners.add(new Coordinate(point.x(), point.y())));
    corners.add(corners.get(0).copy());
    if (corners.size() < 4) {
      throw error("motif.flat", "motif.flat.remedy", "name", region.name());
    }
    Polygon outline = FACTORY.createPolygon(corners.toArray(Coordinate[]::new));
    IsValidOp validity = new IsValidOp(outline);
    TopologyValidationError fault = validity.getValidationError();
    // A contour may touch itself at a point, as a bow tie does not: that one crosses itself.
    if (fault != null && fault.getErrorType() != TopologyValidationError.RING_SELF_INTERSECTION) {
      Coordinate at = fault.getCoordinate();
      throw error("motif.crosses", "motif.crosses.remedy", "name", region.name(), "x", number(at.x), "y",
          number(at.y));
    }
    return outline;
  }

  /** Outer edges counter-clockwise, holes clockwise: by how many other contours hold a contour. */
  private static Region usual(Region region, List<Polygon> outlines) {
    List<Contour> turned = new ArrayList<>();
    for (int i = 0; i < outlines.size(); i++) {
      int depth = 0;
      for (int j = 0; j < outlines.size(); j++) {
        depth += i != j && outlines.get(j).contains(outlines.get(i).getInteriorPoint())
            && outlines.get(j).getArea() > outlines.get(i).getArea() ? 1 : 0;
      }
      Contour outer = region.contours().get(i).counterClockwise();
      turned.add(depth % 2 == 0 ? outer : outer.reversed());
    }
    return new Region(region.name(), region.colour(), turned);
  }

  void overlaps() throws InputException {
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        overlap(all.get(j), all.get(i));
      }
    }
  }

  private void overlap(Checked first, Checked second) throws InputException {
    // What rounding makes overlap is thinner than this on either side of its middle.
    double thin = (CHORD + Boundaries.SNAP) * unit;
    Envelope both = first.shape.getEnvelopeInternal().intersection(second.shape.getEnvelopeInternal());
    if (Math.min(both.getWidth(), both.getHeight()) <= 2 * thin) {
      return;
    }
    Geometry shared = OverlayNGRobust.overlay(first.shape, second.shape, OverlayNG.INTERSECTION);
    Geometry core = shared.buffer(-thin, 2);
    if (!core.isEmpty()) {
      Vec at = new Vec(core.getInteriorPoint().getX(), core.getInteriorPoint().getY());
      throw error("motif.overlap", "motif.overlap.remedy", "first", first.region.name(), "second",
          second.region.name(), "x", number(at.x()), "y", number(at.y()), "share",
          number(100 * shared.getArea() / (width * height)));
    }
  }

  private InputException error(String problem, String remedy, Object... values) {
    return new InputException(motif, MESSAGES.text(problem, values), MESSAGES.text(remedy, values));
  }

  /** A number of the drawing with at most four digits after the point. */
  private static String number(double value) {
    double rounded = Math.rint(value * 1e4) / 1e4 + 0.0;
    return BigDecimal.valueOf(rounded).stripTrailingZeros().toPlainString();
  }
}
