// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.model.CircleOutline;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.PathOutline;
import muralbench.model.Point;
import muralbench.model.PolygonOutline;
import muralbench.model.RectangleOutline;
import muralbench.model.RepeatedOutline;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.PathData;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.geometry.Vec;
import muralbench.setout.survey.AdjustedWall;

/** Turns outlines of the model into contours. */
final class OutlineReader {
  private static final Messages MESSAGES = Messages.of(OutlineReader.class);

  private final Ranges ranges;

  OutlineReader(Ranges ranges) {
    this.ranges = ranges;
  }

  Contour contour(Outline outline) throws InputException {
    if (outline == null) {
      throw ranges.error("read.outline.missing");
    }
    if (outline instanceof RectangleOutline rectangle) {
      return rectangle(rectangle);
    }
    if (outline instanceof CircleOutline circle) {
      return circle(circle);
    }
    if (outline instanceof PolygonOutline polygon) {
      return polygon(polygon.getPoints());
    }
    if (outline instanceof PathOutline path) {
      return path(path.getData());
    }
    if (outline instanceof RepeatedOutline repeated && repeated.eContainer() instanceof Panel) {
      Contour original = original(repeated);
      return transfer(repeated, original).of(original);
    }
    Optional<AdjustedWall> survey = new SurveyReader(ranges).survey(outline);
    if (survey.isPresent()) {
      return Contour.polygon(survey.get().corners()).counterClockwise();
    }
    throw ranges.error("read.outline.unknown");
  }

  /** How the outline of the panel that is repeated is carried over. */
  Transfer transfer(RepeatedOutline outline, Contour original) throws InputException {
    Vec corner = new Vec(ranges.position("x", outline.getX()), ranges.position("y", outline.getY()));
    return Transfer.of(original.box(), corner, outline.isMirrored());
  }

  private Contour original(RepeatedOutline outline) throws InputException {
    if (outline.getPanel() == null || outline.getPanel().eIsProxy()) {
      throw ranges.error("read.repeated.missing");
    }
    Set<Outline> seen = new HashSet<>(List.of(outline));
    for (Outline next = outline.getPanel().getOutline(); next instanceof RepeatedOutline repeated
        && repeated.getPanel() != null; next = repeated.getPanel().getOutline()) {
      if (!seen.add(next)) {
        throw ranges.error("read.circle", "panels", outline.getPanel().getId());
      }
    }
    return contour(outline.getPanel().getOutline());
  }

  private Contour rectangle(RectangleOutline rectangle) throws InputException {
    double x = ranges.position("x", rectangle.getX());
    double y = ranges.position("y", rectangle.getY());
    return Contour.rectangle(x, y, ranges.positive("width", rectangle.getWidth()),
        ranges.positive("height", rectangle.getHeight()));
  }

  private Contour circle(CircleOutline circle) throws InputException {
    double x = ranges.position("centre", circle.getCentreX());
    double y = ranges.position("centre", circle.getCentreY());
    return Contour.circle(new Vec(x, y), ranges.positive("radius", circle.getRadius()));
  }

  private Contour polygon(List<Point> points) throws InputException {
    List<Vec> corners = new ArrayList<>(points.size());
    for (Point point : points) {
      int number = corners.size() + 1;
      // Adding 0 makes one zero of two, so that equal corners are equal.
      corners.add(new Vec(ranges.corner(number, point.getX()) + 0.0, ranges.corner(number, point.getY()) + 0.0));
    }
    int different = new HashSet<>(corners).size();
    if (different < 3) {
      throw ranges.error("read.polygon.corners", "corners", different);
    }
    return Contour.polygon(withoutRepeats(corners)).counterClockwise();
  }

  private static List<Vec> withoutRepeats(List<Vec> corners) {
    List<Vec> kept = new ArrayList<>(corners.size());
    Vec before = corners.get(corners.size() - 1);
    for (Vec corner : corners) {
      if (!corner.equals(before)) {
        kept.add(corner);
      }
      before = corner;
    }
    return kept;
  }

  private Contour path(String data) throws InputException {
    List<Contour> parts;
    try {
      parts = PathData.parse(data == null ? "" : data);
    } catch (PathData.PathDataException e) {
      throw new InputException(ranges.place(), e.getMessage(), MESSAGES.text("read.path.remedy"), e);
    }
    if (parts.size() != 1) {
      throw ranges.error("read.path.parts", "parts", parts.size());
    }
    Box box = parts.get(0).box();
    for (double edge : new double[] {box.minX(), box.minY(), box.maxX(), box.maxY()}) {
      ranges.position("path", edge);
    }
    return parts.get(0).counterClockwise();
  }
}
