// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * The shape of a piece on its face, ready to be laid on another. The middle of the face lies at (0, 0): a movement that
 * lays a face on a face lays middle on middle, so only a turn is left to be found. The turns to be tried come from the
 * longest straight sides of the face; a face without any, such as a round one, is turned by what is farthest out on the
 * piece.
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
    Contour face = piece.cell().face();
    Motion centred = Motion.shift(Ring.of(face).centroid().times(-1));
    Motion back = piece.placed().inverse().then(centred);
    return new CutShape(face.moved(centred), piece.outline().moved(back),
        piece.holes().stream().map(hole -> hole.moved(back)).toList());
  }

  /** Whether this shape can be laid on another, face on face, by turning. */
  boolean sameAs(CutShape other) {
    if (holes.size() != other.holes.size() || Math.abs(outline.reach() - other.outline.reach()) > 2 * TOLERANCE) {
      return false;
    }
    double onto = other.anchors.get(0);
    return anchors.stream().anyMatch(anchor -> fits(Turn.by(onto - anchor), other));
  }

  /** The turns, radians, that lay the face on itself, from those the face's sides suggest and some further ones. */
  List<Double> faceTurns(List<Double> further) {
    double first = anchors.get(0);
    return Stream.concat(anchors.stream().map(anchor -> first - anchor), further.stream())
        .filter(turn -> face.covers(Turn.by(turn), face, TOLERANCE)).toList();
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

  /** Directions, radians, of which one lies on the first of another shape's if the shapes are the same. */
  private static List<Double> anchors(Contour face, List<Contour> piece) {
    List<Vec> sides = face.segments().stream().filter(Segment::straight).map(s -> s.end().minus(s.start())).toList();
    List<Vec> marks = sides.isEmpty() ? piece.stream().flatMap(CutShape::marks).toList() : sides;
    double longest = marks.stream().mapToDouble(Vec::length).max().orElse(0);
    if (longest <= TOLERANCE) {
      return List.of(0.0);
    }
    Stream<Vec> nearly = marks.stream().filter(mark -> mark.length() >= longest - 4 * TOLERANCE);
    return nearly.sorted((a, b) -> Double.compare(b.length(), a.length())).map(mark -> Math.atan2(mark.y(), mark.x()))
        .toList();
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
