// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.List;
import muralbench.setout.SetOut;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/** A closed line as chords, for telling whether two lines run alike wherever their corners were put. */
final class Ring {
  /** How often a chord is looked at besides its ends, so that lines through the same corners are told apart. */
  private static final int LOOKS = 5;

  private final List<Vec> corners;

  private Ring(List<Vec> corners) {
    this.corners = corners;
  }

  static Ring of(Contour contour) {
    return new Ring(contour.points(SetOut.CHORD_ERROR));
  }

  /** The middle of the enclosed area. */
  Vec centroid() {
    Vec near = corners.get(0);
    double area = 0;
    Vec sum = Vec.ZERO;
    for (int i = 0; i < corners.size(); i++) {
      Vec a = corners.get(i).minus(near);
      Vec b = next(i).minus(near);
      area += a.cross(b);
      sum = sum.plus(a.plus(b).times(a.cross(b)));
    }
    return area == 0 ? near : near.plus(sum.times(1 / (3 * area)));
  }

  /** The largest distance of the line from (0, 0). */
  double reach() {
    return corners.stream().mapToDouble(Vec::length).max().orElse(0);
  }

  /** Whether this line, turned, and the other lie within {@code tolerance} mm of each other everywhere. */
  boolean covers(Motion turn, Ring other, double tolerance) {
    return follows(turn, other, tolerance) && other.follows(turn.inverse(), this, tolerance);
  }

  private boolean follows(Motion turn, Ring other, double tolerance) {
    for (int i = 0; i < corners.size(); i++) {
      for (int look = 0; look <= LOOKS; look++) {
        if (!other.near(turn.of(corners.get(i).towards(next(i), look / (LOOKS + 1.0))), tolerance)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean near(Vec point, double tolerance) {
    for (int i = 0; i < corners.size(); i++) {
      if (distance(corners.get(i), next(i), point) <= tolerance) {
        return true;
      }
    }
    return false;
  }

  private static double distance(Vec a, Vec b, Vec point) {
    Vec chord = b.minus(a);
    double square = chord.dot(chord);
    double along = square == 0 ? 0 : Math.max(0, Math.min(1, point.minus(a).dot(chord) / square));
    return point.distance(a.plus(chord.times(along)));
  }

  private Vec next(int i) {
    return corners.get(i + 1 < corners.size() ? i + 1 : 0);
  }
}
