// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import muralbench.setout.geometry.Cubic;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * Where colour changes in a drawing: within it and along its sides. Found by putting all edges of regions on the lines,
 * circles and curves they lie on and reading off, stretch by stretch, which colour lies on which side. So it does not
 * matter how areas and edges are divided, where a contour starts or which way it runs.
 */
final class Boundaries {
  /** Edges this near are one, as a share of the tile's longer side: what rounding to 0.01 mm makes of a shared edge. */
  static final double SNAP = 1e-4;

  private record Mark(double from, double to, boolean forward, String colour) {}

  private record Track(Carrier carrier, List<Mark> marks) {}

  private final double width;
  private final double height;
  private final String ground;
  private final double tolerance;
  private final List<Track> tracks = new ArrayList<>();
  private final Map<Edge, Track> sides = new EnumMap<>(Edge.class);

  /** The boundaries of a strip; the unit is the longer side of one of its tiles. */
  Boundaries(double width, double height, double unit, String ground, List<Region> regions, List<DrawnLine> lines) {
    this.width = width;
    this.height = height;
    this.ground = ground;
    tolerance = SNAP * unit;
    side(Edge.LEFT, Vec.ZERO, new Vec(0, 1));
    side(Edge.RIGHT, new Vec(width, 0), new Vec(0, 1));
    side(Edge.BOTTOM, Vec.ZERO, new Vec(1, 0));
    side(Edge.TOP, new Vec(0, height), new Vec(1, 0));
    place(regions, lines);
  }

  private record Stroke(Segment segment, String colour, double length) {}

  private void side(Edge edge, Vec origin, Vec direction) {
    Track track = new Track(new Carrier.Straight(origin, direction), new ArrayList<>());
    sides.put(edge, track);
    tracks.add(track);
  }

  private void place(List<Region> regions, List<DrawnLine> lines) {
    List<Stroke> strokes = new ArrayList<>();
    for (Region region : regions) {
      region.contours().forEach(contour -> addStrokes(strokes, contour.segments(), region.colour()));
    }
    lines.forEach(line -> addStrokes(strokes, line.segments(), null));
    // The longest first: what is short tells little about the line it lies on.
    strokes.sort(Comparator.comparingDouble(Stroke::length).reversed());
    strokes.forEach(this::place);
  }

  private void addStrokes(List<Stroke> strokes, List<Segment> segments, String colour) {
    for (Segment segment : segments) {
      Segment simple = simple(segment);
      double length = simple.length();
      if (length > tolerance) {
        strokes.add(new Stroke(simple, colour, length));
      }
    }
  }

  /** A curve that is a straight line becomes one. */
  private Segment simple(Segment segment) {
    if (!(segment instanceof Cubic cubic) || cubic.start().distance(cubic.end()) <= tolerance) {
      return segment;
    }
    Vec along = cubic.end().minus(cubic.start());
    boolean straight = true;
    for (Vec control : List.of(cubic.c1(), cubic.c2())) {
      Vec off = control.minus(cubic.start());
      double t = off.dot(along) / along.dot(along);
      straight &= t >= 0 && t <= 1 && Math.abs(off.cross(along)) <= tolerance * along.length() / 10;
    }
    return straight ? new Line(cubic.start(), cubic.end()) : segment;
  }

  private void place(Stroke stroke) {
    for (Track track : tracks) {
      Carrier.Span span = track.carrier.locate(stroke.segment, tolerance);
      if (span != null) {
        track.marks.add(new Mark(span.from(), span.to(), span.forward(), stroke.colour));
        return;
      }
    }
    Track track = new Track(Carrier.of(stroke.segment), new ArrayList<>());
    Carrier.Span span = track.carrier.locate(stroke.segment, tolerance);
    track.marks.add(new Mark(span.from(), span.to(), span.forward(), stroke.colour));
    tracks.add(track);
  }

  /** The boundaries within the drawing, its sides left out. */
  List<Boundary> within() {
    List<Boundary> all = new ArrayList<>();
    for (Track track : tracks) {
      if (!sides.containsValue(track)) {
        joined(track, all);
      }
    }
    return all;
  }

  /** The colours along each side. */
  Map<Edge, EdgeProfile> profiles() {
    Map<Edge, EdgeProfile> profiles = new EnumMap<>(Edge.class);
    sides.forEach((edge, track) -> profiles.put(edge, profile(track, edge.upright() ? height : width)));
    return profiles;
  }

  private EdgeProfile profile(Track track, double length) {
    List<Double> stops = new ArrayList<>(List.of(0.0, length));
    track.marks.forEach(mark -> stops.addAll(List.of(mark.from, mark.to)));
    double[] breaks = distinct(stops.stream().mapToDouble(Double::doubleValue).toArray(), tolerance);
    List<EdgeProfile.Stretch> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < breaks.length; i++) {
      double middle = (breaks[i] + breaks[i + 1]) / 2;
      String colour = track.marks.stream().filter(mark -> mark.colour != null && covers(mark, middle, 0))
          .map(Mark::colour).findFirst().orElse(ground);
      int last = stretches.size() - 1;
      if (last >= 0 && stretches.get(last).colour().equals(colour)) {
        stretches.set(last, new EdgeProfile.Stretch(stretches.get(last).from(), breaks[i + 1], colour));
      } else {
        stretches.add(new EdgeProfile.Stretch(breaks[i], breaks[i + 1], colour));
      }
    }
    return new EdgeProfile(length, stretches);
  }

  private record Piece(double from, double to, String left, String right) {
    boolean goesOn(Piece next, double step) {
      return Math.abs(to - next.from) <= step && left.equals(next.left) && right.equals(next.right);
    }
  }

  private void joined(Track track, List<Boundary> all) {
    double step = track.carrier.step(tolerance);
    double period = track.carrier.period();
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : pieces(track, step)) {
      int last = pieces.size() - 1;
      if (last >= 0 && pieces.get(last).goesOn(piece, step)) {
        pieces.set(last, new Piece(pieces.get(last).from, piece.to, piece.left, piece.right));
      } else {
        pieces.add(piece);
      }
    }
    boolean round = period > 0 && !pieces.isEmpty();
    if (round && pieces.size() == 1 && pieces.get(0).to - pieces.get(0).from > period - step) {
      Piece whole = pieces.get(0);
      Segment circle = track.carrier.part(whole.from, whole.from + period);
      all.add(new Boundary(circle, true, whole.left, whole.right));
      return;
    }
    if (round && pieces.size() > 1) {
      Piece last = pieces.get(pieces.size() - 1);
      Piece first = pieces.get(0);
      if (last.goesOn(new Piece(first.from + period, first.to + period, first.left, first.right), step)) {
        pieces.set(0, new Piece(last.from - period, first.to, first.left, first.right));
        pieces.remove(pieces.size() - 1);
      }
    }
    pieces.forEach(each -> all.add(
        new Boundary(track.carrier.part(each.from, each.to), false, each.left, each.right)));
  }

  private List<Piece> pieces(Track track, double step) {
    double period = track.carrier.period();
    List<Double> stops = new ArrayList<>();
    track.marks.forEach(mark -> stops.addAll(List.of(wrapped(mark.from, period), wrapped(mark.to, period))));
    double[] breaks = distinct(stops.stream().mapToDouble(Double::doubleValue).toArray(), step);
    if (period > 0) {
      breaks = around(breaks, period, step);
    }
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < breaks.length; i++) {
      Piece piece = piece(track, breaks[i], breaks[i + 1]);
      if (piece != null) {
        pieces.add(piece);
      }
    }
    return pieces;
  }

  /** The stops once round, the first again at the end; two that meet across the start of the circle become one. */
  private static double[] around(double[] breaks, double period, double step) {
    int count = breaks.length;
    if (count > 1 && breaks[0] + period - breaks[count - 1] <= step) {
      count--;
    }
    double[] round = Arrays.copyOf(breaks, count + 1);
    round[count] = breaks[0] + period;
    return round;
  }

  /** The stretch between two stops if it shows: a change of colour, or a line drawn there. */
  private Piece piece(Track track, double from, double to) {
    double middle = (from + to) / 2;
    String left = null;
    String right = null;
    boolean drawn = false;
    boolean edge = false;
    for (Mark mark : track.marks) {
      if (covers(mark, middle, track.carrier.period())) {
        drawn |= mark.colour == null;
        edge |= mark.colour != null;
        left = mark.colour != null && mark.forward ? mark.colour : left;
        right = mark.colour != null && !mark.forward ? mark.colour : right;
      }
    }
    left = Objects.requireNonNullElse(left, ground);
    right = Objects.requireNonNullElse(right, ground);
    if (edge && !left.equals(right)) {
      return new Piece(from, to, left, right);
    }
    return drawn ? new Piece(from, to, "", "") : null;
  }

  private static boolean covers(Mark mark, double at, double period) {
    if (period == 0) {
      return at > mark.from && at < mark.to;
    }
    double ahead = (at - mark.from) % period;
    return (ahead < 0 ? ahead + period : ahead) < mark.to - mark.from;
  }

  private static double wrapped(double value, double period) {
    return period == 0 ? value : value - period * Math.floor(value / period);
  }

  /** The values in order, those within {@code step} of the one before left out. */
  private static double[] distinct(double[] values, double step) {
    Arrays.sort(values);
    int count = 0;
    for (double value : values) {
      if (count == 0 || value - values[count - 1] > step) {
        values[count++] = value;
      }
    }
    return Arrays.copyOf(values, count);
  }
}
