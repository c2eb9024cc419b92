// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.model.CircleOutline;
import muralbench.model.MuralFactory;
import muralbench.model.Outline;
import muralbench.model.PathOutline;
import muralbench.model.Point;
import muralbench.model.PolygonOutline;
import muralbench.model.RectangleOutline;
import muralbench.model.RepeatedOutline;
import muralbench.setout.MuralReader;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.PathData;
import muralbench.setout.geometry.Vec;

/** Measures outlines of the model, and moves and stretches them. */
public final class Outlines {
  private Outlines() {}

  /** The contour of an outline; none if it cannot be read. */
  public static Optional<Contour> contour(Outline outline) {
    try {
      return outline == null ? Optional.empty() : Optional.of(MuralReader.outline(outline, ""));
    } catch (InputException e) {
      // The set-out reports the same problem with its place; here the thing is merely not drawn or measured.
      return Optional.empty();
    }
  }

  /** The frame of an outline; none if it cannot be read. */
  public static Optional<Frame> frame(Outline outline) {
    if (outline instanceof RectangleOutline r) {
      return Optional.of(new Frame(r.getX(), r.getY(), r.getWidth(), r.getHeight()));
    }
    if (outline instanceof CircleOutline c) {
      double r = c.getRadius();
      return Optional.of(new Frame(c.getCentreX() - r, c.getCentreY() - r, 2 * r, 2 * r));
    }
    if (outline instanceof PolygonOutline p && !p.getPoints().isEmpty()) {
      return p.getPoints().stream().map(at -> new Box(at.getX(), at.getY(), at.getX(), at.getY())).reduce(Box::and)
          .map(Frame::of);
    }
    return contour(outline).map(Contour::box).map(Frame::of);
  }

  /**
   * Moves and stretches an outline from its frame to another; a circle stays one, as large as fits, and what was measured
   * on site or repeats another panel is not stretched.
   */
  public static void fit(Outline outline, Frame from, Frame to) {
    PathFit fit = PathFit.of(from, to);
    if (outline instanceof RectangleOutline r) {
      fit(r, to);
    } else if (outline instanceof CircleOutline c) {
      fit(c, from, to);
    } else if (outline instanceof PolygonOutline p) {
      for (Point point : p.getPoints()) {
        point.setX(fit.x(point.getX()));
        point.setY(fit.y(point.getY()));
      }
    } else if (outline instanceof PathOutline p) {
      p.setData(fitted(p.getData(), fit));
    } else if (outline instanceof RepeatedOutline r && from.sameSize(to)) {
      r.setX(Frame.clean(r.getX() + to.x() - from.x()));
      r.setY(Frame.clean(r.getY() + to.y() - from.y()));
    } else {
      MeasuredShapes.move(outline, from, to);
    }
  }

  private static void fit(RectangleOutline r, Frame to) {
    r.setX(to.x());
    r.setY(to.y());
    r.setWidth(to.width());
    r.setHeight(to.height());
  }

  private static void fit(CircleOutline c, Frame from, Frame to) {
    c.setCentreX(Frame.clean(to.middleX()));
    c.setCentreY(Frame.clean(to.middleY()));
    if (!from.sameSize(to)) {
      c.setRadius(Frame.clean(Math.min(to.width(), to.height()) / 2));
    }
  }

  private static String fitted(String data, PathFit fit) {
    try {
      List<Contour> contours = PathData.parse(data);
      return contours.stream().map(fit::of).map(PathData::print).collect(Collectors.joining(" "));
    } catch (PathData.PathDataException e) {
      throw new IllegalArgumentException(e.getMessage(), e);
    }
  }

  /** Shifts an outline. */
  public static void shift(Outline outline, double dx, double dy) {
    frame(outline).ifPresent(frame -> fit(outline, frame, frame.moved(dx, dy)));
  }

  /** A rectangle. */
  public static RectangleOutline rectangle(Frame frame) {
    RectangleOutline r = MuralFactory.eINSTANCE.createRectangleOutline();
    fit(r, frame);
    return r;
  }

  /** The largest circle in the middle of a frame. */
  public static CircleOutline circle(Frame frame) {
    CircleOutline c = MuralFactory.eINSTANCE.createCircleOutline();
    c.setCentreX(Frame.clean(frame.middleX()));
    c.setCentreY(Frame.clean(frame.middleY()));
    c.setRadius(Frame.clean(Math.min(frame.width(), frame.height()) / 2));
    return c;
  }

  /** A polygon with the given corners. */
  public static PolygonOutline polygon(List<Vec> corners) {
    PolygonOutline p = MuralFactory.eINSTANCE.createPolygonOutline();
    for (Vec corner : corners) {
      Point point = MuralFactory.eINSTANCE.createPoint();
      point.setX(Frame.clean(corner.x()));
      point.setY(Frame.clean(corner.y()));
      p.getPoints().add(point);
    }
    return p;
  }

  /** A path along a contour. */
  public static PathOutline path(Contour contour) {
    PathOutline p = MuralFactory.eINSTANCE.createPathOutline();
    p.setData(PathData.print(contour));
    return p;
  }
}
