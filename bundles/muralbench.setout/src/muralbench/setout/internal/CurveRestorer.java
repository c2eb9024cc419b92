// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Gives cut pieces their true curved edges back. Pieces are cut with chords in the place of curves; every edge of a piece
 * that lies on a chord is part of that chord's curve, and where such an edge meets another, the corner is moved to the
 * true intersection. So corners, lengths and areas are those of the curves, not of the chords.
 */
final class CurveRestorer {
  /** An edge lies on a chord if both its ends are this near, mm. */
  private static final double ON_CHORD = 1e-5;
  /** Corners closer than this are one, and straight corners that bend by less are none, mm. */
  private static final double SAME = 1e-6;
  /** A corner is not moved farther than this, mm; curves that hardly cross keep the corner of their chords. */
  private static final double FARTHEST_MOVE = 0.1;
  /** Two arcs are of one circle if their measures agree to this, mm or radians. */
  private static final double SAME_CIRCLE = 1e-7;

  private record Chord(Segment curve, int index, double from, double to, Vec start, Vec end) {}

  private final CurveRestorer before;
  private final STRtree chords = new STRtree();
  private final List<Arc> circles;
  private final double chordError;
  private final int curves;

  private CurveRestorer(CurveRestorer before, List<Contour> contours, List<Arc> circles, double chordError) {
    this.before = before;
    this.circles = circles;
    this.chordError = chordError;
    int curves = before == null ? 0 : before.curves;
    for (Contour contour : contours) {
      for (Segment segment : contour.segments()) {
        if (!segment.straight()) {
          addChords(segment, curves++);
        }
      }
    }
    this.curves = curves;
    chords.build();
  }

  /**
   * A restorer for the curves of some contours.
   *
   * @param chordError as used for the polygons that are cut
   */
  static CurveRestorer of(List<Contour> contours, double chordError) {
    return new CurveRestorer(null, contours, List.of(), chordError);
  }

  /** This restorer, which also knows the curves of one more contour. */
  CurveRestorer and(Contour contour) {
    return new CurveRestorer(this, List.of(contour), circles, chordError);
  }

  /**
   * A restorer for polygons whose corners lie near, but not on, full circles.
   *
   * @param chordError how far the corners and edges may be off, mm
   */
  static CurveRestorer ofCircles(List<Arc> circles, double chordError) {
    return new CurveRestorer(null, List.of(), circles, chordError);
  }

  private void addChords(Segment curve, int index) {
    List<Vec> points = curve.flatten(chordError);
    Vec before = curve.start();
    for (int i = 0; i < points.size(); i++) {
      Vec after = points.get(i);
      Envelope envelope = new Envelope(before.x(), after.x(), before.y(), after.y());
      envelope.expandBy(ON_CHORD);
      chords.insert(envelope,
          new Chord(curve, index, (double) i / points.size(), (i + 1.0) / points.size(), before, after));
      before = after;
    }
  }

  /** A stretch of the ring: a straight edge, or a run along one curve from one parameter to another. */
  private static final class Stretch {
    final Segment curve;
    final int index;
    double from;
    double to;
    Vec start;
    Vec end;

    Stretch(Vec start, Vec end, Segment curve, int index, double from, double to) {
      this.start = start;
      this.end = end;
      this.curve = curve;
      this.index = index;
      this.from = from;
      this.to = to;
    }
  }

  /** The contour of a closed ring of the geometry library, counter-clockwise. */
  Contour restore(Coordinate[] ring) {
    List<Stretch> stretches = joined(stretches(fromLeft(ring)));
    if (stretches.size() > 1) {
      for (int i = 0; i < stretches.size(); i++) {
        meet(stretches.get(i), stretches.get((i + 1) % stretches.size()));
      }
    }
    List<Segment> segments = new ArrayList<>(stretches.size());
    for (Stretch stretch : stretches) {
      Segment segment = segment(stretch);
      if (segment != null) {
        segments.add(segment);
      }
    }
    return new Contour(withArcsJoined(segments)).counterClockwise();
  }

  /** The ring counter-clockwise from its leftmost corner: it does not matter how the geometry library walks it. */
  private static Coordinate[] fromLeft(Coordinate[] ring) {
    int count = ring.length - 1;
    int step = Orientation.isCCW(ring) ? 1 : -1;
    int first = 0;
    for (int i = 1; i < count; i++) {
      if (ring[i].compareTo(ring[first]) < 0) {
        first = i;
      }
    }
    Coordinate[] turned = new Coordinate[ring.length];
    for (int i = 0; i < ring.length; i++) {
      turned[i] = ring[Math.floorMod(first + i * step, count)];
    }
    return turned;
  }

  private List<Stretch> stretches(Coordinate[] ring) {
    List<Stretch> stretches = new ArrayList<>(ring.length);
    Vec before = Rings.vec(ring[0]);
    for (int i = 1; i < ring.length; i++) {
      Vec after = Rings.vec(ring[i]);
      if (before.distance(after) > SAME) {
        stretches.add(stretch(before, after));
        before = after;
      }
    }
    return stretches;
  }

  private Stretch stretch(Vec start, Vec end) {
    Stretch curved = curved(start, end);
    return curved == null ? new Stretch(start, end, null, -1, 0, 1) : curved;
  }

  private Stretch curved(Vec start, Vec end) {
    Chord chord = chord(start, end);
    if (chord != null) {
      return new Stretch(start, end, chord.curve(), chord.index(), along(chord, start), along(chord, end));
    }
    for (int i = 0; i < circles.size(); i++) {
      Arc circle = circles.get(i);
      if (near(circle, start) && near(circle, end) && near(circle, start.towards(end, 0.5))) {
        Vec a = start.minus(circle.centre());
        Vec b = end.minus(circle.centre());
        double from = Math.atan2(a.y(), a.x()) / (2 * Math.PI);
        return new Stretch(start, end, circle, -2 - i, from, from + Math.atan2(a.cross(b), a.dot(b)) / (2 * Math.PI));
      }
    }
    return before == null ? null : before.curved(start, end);
  }

  /** The first chord, along the first curve, that an edge lies on; null if there is none. */
  private Chord chord(Vec start, Vec end) {
    Chord first = null;
    for (Object item : chords.query(new Envelope(start.x(), end.x(), start.y(), end.y()))) {
      Chord chord = (Chord) item;
      boolean before = first == null || chord.index() < first.index()
          || chord.index() == first.index() && chord.from() < first.from();
      if (before && !Double.isNaN(along(chord, start)) && !Double.isNaN(along(chord, end))) {
        first = chord;
      }
    }
    return first;
  }

  private boolean near(Arc circle, Vec point) {
    return Math.abs(point.distance(circle.centre()) - circle.rx()) < 3 * chordError;
  }

  /** The curve's parameter at a point on its chord; not a number if the point is off the chord. */
  private static double along(Chord chord, Vec point) {
    Vec direction = chord.end().minus(chord.start());
    double length = direction.length();
    Vec offset = point.minus(chord.start());
    double forward = offset.dot(direction) / length;
    if (Math.abs(direction.cross(offset)) / length > ON_CHORD || forward < -ON_CHORD || forward > length + ON_CHORD) {
      return Double.NaN;
    }
    double share = Math.min(1, Math.max(0, forward / length));
    return chord.from() + (chord.to() - chord.from()) * share;
  }

  /** Joins neighbours that run along one curve the same way, and straight neighbours in one line. */
  private List<Stretch> joined(List<Stretch> stretches) {
    List<Stretch> joined = new ArrayList<>(stretches.size());
    for (Stretch next : stretches) {
      if (joined.isEmpty() || !join(joined.get(joined.size() - 1), next)) {
        joined.add(next);
      }
    }
    while (joined.size() > 1 && join(joined.get(joined.size() - 1), joined.get(0))) {
      joined.set(0, joined.remove(joined.size() - 1));
    }
    return joined;
  }

  private boolean join(Stretch first, Stretch next) {
    if (first.index != next.index) {
      return false;
    }
    if (first.curve == null) {
      Vec whole = next.end.minus(first.start);
      double length = whole.length();
      if (length < SAME || Math.abs(whole.cross(first.end.minus(first.start))) / length > SAME) {
        return false;
      }
    } else {
      double turns = first.index < -1 ? Math.rint(first.to - next.from) : 0;
      if (Math.abs(first.to - next.from - turns) > SAME || (first.to > first.from) != (next.to > next.from)) {
        return false;
      }
      next.to += turns;
    }
    first.to = next.to;
    first.end = next.end;
    return true;
  }

  /** Moves the corner between two stretches to where their true lines cross. */
  private static void meet(Stretch first, Stretch next) {
    if (first.curve == null && next.curve == null) {
      return;
    }
    Segment a = first.curve == null ? new Line(first.start, first.end) : first.curve;
    Segment b = next.curve == null ? new Line(next.start, next.end) : next.curve;
    double s = first.curve == null ? 1 : first.to;
    double t = next.curve == null ? 0 : next.from;
    for (int round = 0; round < 8; round++) {
      Vec gap = b.at(t).minus(a.at(s));
      Vec da = a.tangent(s);
      Vec db = b.tangent(t);
      double det = da.cross(db);
      if (gap.length() < 1e-12 || Math.abs(det) < 1e-9 * da.length() * db.length()) {
        break;
      }
      s += gap.cross(db) / det;
      t += gap.cross(da) / det;
    }
    Vec corner = next.curve == null ? a.at(s) : b.at(t);
    if (corner.distance(first.end) > FARTHEST_MOVE) {
      return;
    }
    first.end = corner;
    next.start = corner;
    if (first.curve != null) {
      first.to = s;
    }
    if (next.curve != null) {
      next.from = t;
    }
  }

  private static Segment segment(Stretch stretch) {
    if (stretch.curve == null) {
      return stretch.start.distance(stretch.end) > SAME ? new Line(stretch.start, stretch.end) : null;
    }
    if (stretch.from == stretch.to) {
      return null;
    }
    return stretch.from < stretch.to ? stretch.curve.part(stretch.from, stretch.to)
        : stretch.curve.part(stretch.to, stretch.from).reversed();
  }

  private static List<Segment> withArcsJoined(List<Segment> segments) {
    List<Segment> joined = new ArrayList<>(segments.size());
    for (Segment next : segments) {
      int last = joined.size() - 1;
      Arc arc = last < 0 ? null : oneArc(joined.get(last), next);
      if (arc == null) {
        joined.add(next);
      } else {
        joined.set(last, arc);
      }
    }
    int last = joined.size() - 1;
    Arc arc = last < 1 ? null : oneArc(joined.get(last), joined.get(0));
    if (arc != null) {
      joined.set(0, arc);
      joined.remove(last);
    }
    return joined;
  }

  private static Arc oneArc(Segment first, Segment next) {
    if (!(first instanceof Arc a) || !(next instanceof Arc b) || a.centre().distance(b.centre()) > SAME_CIRCLE
        || Math.abs(a.rx() - b.rx()) > SAME_CIRCLE || Math.abs(a.ry() - b.ry()) > SAME_CIRCLE
        || Math.abs(a.tilt() - b.tilt()) > SAME_CIRCLE || a.sweep() > 0 != b.sweep() > 0
        || a.end().distance(b.start()) > SAME) {
      return null;
    }
    double sweep = a.sweep() + b.sweep();
    if (Math.abs(Math.abs(sweep) - 2 * Math.PI) < SAME_CIRCLE) {
      sweep = Math.copySign(2 * Math.PI, sweep);
    }
    return new Arc(a.centre(), a.rx(), a.ry(), a.tilt(), a.from(), sweep);
  }
}
