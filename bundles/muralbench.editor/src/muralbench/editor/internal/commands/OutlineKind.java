// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.commands;

import java.util.List;
import java.util.Optional;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.MeasuredShapes;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.model.CircleOutline;
import muralbench.model.LevelLineOutline;
import muralbench.model.MeasuredOutline;
import muralbench.model.Outline;
import muralbench.model.PathOutline;
import muralbench.model.PolygonOutline;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/** The kinds of outline, and how an outline of one kind becomes another. */
public enum OutlineKind {
  /** An upright rectangle: the frame. */
  RECTANGLE,
  /** A polygon: the corners, curves as chords. */
  POLYGON,
  /** A circle: the largest in the middle of the frame. */
  CIRCLE,
  /** A path: the same edge, ready to be given arcs and curves. */
  PATH,
  /** A wall of four corners as measured: the sides and diagonals of the frame, ready for the true ones. */
  MEASURED,
  /** A wall measured from a level line: a line in the middle of the frame with a station at either end. */
  LEVEL_LINE;

  /** How far chords may lie from the curves they stand for in a polygon made from a curve, mm. */
  private static final double CHORD_ERROR = 0.5;

  /** The kind of an outline. */
  public static OutlineKind of(Outline outline) {
    if (outline instanceof PolygonOutline) {
      return POLYGON;
    }
    if (outline instanceof CircleOutline) {
      return CIRCLE;
    }
    if (outline instanceof MeasuredOutline) {
      return MEASURED;
    }
    if (outline instanceof LevelLineOutline) {
      return LEVEL_LINE;
    }
    return outline instanceof PathOutline ? PATH : RECTANGLE;
  }

  /** Whether it can be given another width and height, each by itself. */
  public boolean stretches() {
    return this == RECTANGLE || this == POLYGON || this == PATH;
  }

  /** A new outline of this kind as near to the old one as can be; none if the old one cannot be read. */
  public Optional<Outline> from(Outline old) {
    return switch (this) {
      case RECTANGLE -> Outlines.frame(old).map(Outlines::rectangle);
      case CIRCLE -> Outlines.frame(old).map(Outlines::circle);
      case POLYGON -> contour(old).map(contour -> Outlines.polygon(corners(contour)));
      case PATH -> contour(old).map(Outlines::path);
      case MEASURED -> Outlines.frame(old).map(MeasuredShapes::measured);
      case LEVEL_LINE -> Outlines.frame(old).map(MeasuredShapes::levelLine);
    };
  }

  private static Optional<Contour> contour(Outline old) {
    Optional<Contour> contour = Outlines.contour(old);
    return contour.isPresent() ? contour : Outlines.frame(old).map(OutlineKind::rectangle);
  }

  private static Contour rectangle(Frame frame) {
    return Contour.rectangle(frame.x(), frame.y(), frame.width(), frame.height());
  }

  private static List<Vec> corners(Contour contour) {
    return contour.points(CHORD_ERROR);
  }
}
