// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A closed line made of segments, each starting where the one before ends; the last ends where the first starts.
 * Immutable. A contour may run either way round; {@link #counterClockwise()} turns it the usual way.
 *
 * @param segments the stretches in order, at least one
 */
public record Contour(List<Segment> segments) {
  public Contour {
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a contour needs a segment");
    }
    segments = List.copyOf(segments);
  }

  /** An upright rectangle, counter-clockwise from its lower left corner. */
  public static Contour rectangle(double x, double y, double width, double height) {
    double right = x + width;
    double top = y + height;
    return polygon(List.of(new Vec(x, y), new Vec(right, y), new Vec(right, top), new Vec(x, top)));
  }

  /** A polygon with the given corners, the first not repeated at the end. */
  public static Contour polygon(List<Vec> corners) {
    List<Segment> sides = new ArrayList<>(corners.size());
    for (int i = 0; i < corners.size(); i++) {
      sides.add(new Line(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new Contour(sides);
  }

  /** A circle, counter-clockwise from its rightmost point. */
  public static Contour circle(Vec centre, double radius) {
    return new Contour(List.of(Arc.circular(centre, radius, 0, 2 * Math.PI)));
  }

  /** The area enclosed, mm², positive when the contour runs counter-clockwise; exact for lines, arcs and curves. */
  public double signedArea() {
    // Taken about a point of the contour, or far-off walls would lose digits.
    Motion near = Motion.shift(segments.get(0).start().times(-1));
    double area = 0;
    for (Segment segment : segments) {
      area += segment.moved(near).sweptArea();
    }
    return area;
  }

  /** The area enclosed, mm², whichever way the contour runs. */
  public double area() {
    return Math.abs(signedArea());
  }

  /** The length of the line, mm. */
  public double length() {
    return segments.stream().mapToDouble(Segment::length).sum();
  }

  /** The smallest upright rectangle around the contour. */
  public Box box() {
    return segments.stream().map(Segment::box).reduce(Box::and).orElseThrow();
  }

  /** Whether all segments are straight. */
  public boolean straight() {
    return segments.stream().allMatch(Segment::straight);
  }

  /**
   * The corners of the contour as a polygon, the first not repeated; curves become chords.
   *
   * @param chordError the largest distance between chord and curve, mm, above 0
   */
  public List<Vec> points(double chordError) {
    List<Vec> points = new ArrayList<>();
    points.add(segments.get(0).start());
    for (Segment segment : segments) {
      points.addAll(segment.flatten(chordError));
    }
    points.remove(points.size() - 1);
    return points;
  }

  /** This contour, running counter-clockwise. */
  public Contour counterClockwise() {
    return signedArea() >= 0 ? this : reversed();
  }

  /** The same line walked the other way. */
  public Contour reversed() {
    List<Segment> back = new ArrayList<>(segments.size());
    for (int i = segments.size() - 1; i >= 0; i--) {
      back.add(segments.get(i).reversed());
    }
    return new Contour(back);
  }

  /**
   * The mirror image about x = 0, running the same way round. It starts with the image of the first segment, so that a
   * face that starts at its lower left corner still does.
   */
  public Contour mirrored() {
    List<Segment> image = new ArrayList<>(segments.size());
    image.add(segments.get(0).mirrored());
    for (int i = segments.size() - 1; i > 0; i--) {
      image.add(segments.get(i).mirrored());
    }
    return new Contour(image);
  }

  /** This contour after a movement. */
  public Contour moved(Motion motion) {
    return mapped(segment -> segment.moved(motion));
  }

  private Contour mapped(Function<Segment, Segment> change) {
    return new Contour(segments.stream().map(change).toList());
  }
}
