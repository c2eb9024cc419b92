// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * The shape of a piece on its face as it hangs, ready to be laid on another. The middle of the face lies at (0, 0): a
 * movement that lays a face on a face lays middle on middle, so only a turn is left to be found. The turns to be tried
 * come from the longest straight sides of the face; a face without any, such as a round one, is turned by what is
 * farthest out on the piece.
 */
final class CutShape {
  /** How far two pieces of one shape may be apart anywhere, mm. */
  static final double TOLERANCE = 0.01;

  private static final double SAME_CIRCLE = 1e-6;

  private final Ring face;
  private final Ring outline;
  private final List<Ring> holes;
  private final List<Double> anchors;

  private CutShape(Contour face, Contour outline, List<Contour> holes) {
    this.face = Ring.of(face);
    this.outline = Ring.of(outline);
    this.holes = holes.stream().map(Ring::of).toList();
    anchors = anchors(face, Stream.concat(Stream.of(outline), holes.stream()).toList());
  }

  static CutShape of(Piece piece) {
    Contour face = piece.face();
    Motion centred = centred(face);
    return new CutShape(face.moved(centred), piece.outline().moved(centred),
        piece.holes().stream().map(hole -> hole.moved(centred)).toList());
  }

  private static Motion centred(Contour face) {
    return Motion.shift(Ring.of(face).centroid().times(-1));
  }

  /** Whether two lines run alike. */
  static boolean same(Contour one, Contour other) {
    return Ring.of(one).covers(Motion.NONE, Ring.of(other), TOLERANCE);
  }

  /** Whether a face with straight sides lies on itself only as it is, not turned. */
  static boolean fitsOneWay(Contour face) {
    Contour centred = face.moved(centred(face));
    List<Double> sides = anchors(centred, List.of());
    Ring ring = Ring.of(centred);
    return face.segments().stream().anyMatch(Segment::straight) && sides.stream().skip(1)
        .noneMatch(side -> ring.covers(Turn.by(sides.get(0) - side), ring, TOLERANCE));
  }

  /**
   * The turn, degrees, that lays this shape on another, face on face; empty if there is none. Of several the one is
   * taken that, together with a further turn {@code after} it, turns least.
   */
  OptionalDouble turnOnto(CutShape other, double after) {
    if (holes.size() != other.holes.size() || Math.abs(outline.reach() - other.outline.reach()) > 2 * TOLERANCE) {
      return OptionalDouble.empty();
    }
    double onto = other.anchors.get(0);
    return anchors.stream().map(anchor -> onto - anchor).sorted(Turn.leastFirst(after))
        .filter(turn -> fits(Turn.by(turn), other)).mapToDouble(turn -> turn).findFirst();
  }

  private boolean fits(Motion turn, CutShape other) {
    return face.covers(turn, other.face, TOLERANCE) && outline.covers(turn, other.outline, TOLERANCE)
        && holesFit(turn, other);
  }

  private boolean holesFit(Motion turn, CutShape other) {
    List<Ring> left = new ArrayList<>(other.holes);
    for (Ring hole : holes) {
      boolean found = false;
      for (Iterator<Ring> each = left.iterator(); each.hasNext() && !found;) {
        if (hole.covers(turn, each.next(), TOLERANCE)) {
          each.remove();
          found = true;
        }
      }
      if (!found) {
        return false;
      }
    }
    return true;
  }

  /** Directions, degrees, of which one lies on the first of another shape's if the shapes are the same. */
  private static List<Double> anchors(Contour face, List<Contour> piece) {
    List<Vec> sides = face.segments().stream().filter(Segment::straight).map(s -> s.end().minus(s.start())).toList();
    List<Vec> marks = sides.isEmpty() ? piece.stream().flatMap(CutShape::marks).toList() : sides;
    double longest = marks.stream().mapToDouble(Vec::length).max().orElse(0);
    if (longest <= TOLERANCE) {
      return List.of(0.0);
    }
    Stream<Vec> nearly = marks.stream().filter(mark -> mark.length() >= longest - 4 * TOLERANCE);
    return nearly.sorted((a, b) -> Double.compare(b.length(), a.length())).map(Turn::degrees).toList();
  }

  /** The corners of a line; for a full circle, which has none, its centre. */
  private static Stream<Vec> marks(Contour line) {
    List<Segment> segments = line.segments();
    List<Vec> corners = new ArrayList<>();
    Segment before = segments.get(segments.size() - 1);
    for (Segment segment : segments) {
      if (!goesOn(before, segment)) {
        corners.add(segment.start());
      }
      before = segment;
    }
    return corners.isEmpty() && before instanceof Arc arc ? Stream.of(arc.centre()) : corners.stream();
  }

  /** Whether two stretches are of one circle: where it was parted is no mark of the shape. */
  private static boolean goesOn(Segment before, Segment after) {
    return before instanceof Arc a && after instanceof Arc b && a.centre().distance(b.centre()) < SAME_CIRCLE
        && Math.abs(a.rx() - b.rx()) < SAME_CIRCLE && Math.abs(a.ry() - b.ry()) < SAME_CIRCLE;
  }
}
