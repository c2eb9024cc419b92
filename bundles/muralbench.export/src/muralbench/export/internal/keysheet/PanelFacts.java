// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * What the planning of a panel's sheets needs to know of it, independent of paper and scale.
 *
 * @param panel the panel
 * @param first the tile to start with
 * @param box the smallest upright rectangle around panel and pieces, in the wall plane
 * @param keys the room for the key in each piece, in the order of the pieces
 * @param face the room for the widest key in an uncut face
 * @param straight whether the courses lie level
 * @param columns joints that run through from bottom to top, or else those of one course: places across where sheets
 *     best part
 * @param courses joints between courses: heights where sheets may part
 */
record PanelFacts(PanelSetOut panel, FirstTile first, Box box, List<KeyRoom> keys, KeyRoom face, boolean straight,
    List<Double> columns, List<Double> courses) {

  static PanelFacts of(PanelSetOut panel, KeyLetters letters) throws IOException {
    FirstTile first = FirstTile.of(panel);
    List<KeyRoom> keys = new ArrayList<>(panel.pieces().size());
    for (Piece piece : panel.pieces()) {
      keys.add(KeyRoom.in(piece.outline(), piece.holes(), letters.words(piece.key())));
    }
    KeyRoom.Words widest =
        keys.stream().map(KeyRoom::words).max(Comparator.comparingDouble(KeyRoom.Words::width)).orElseThrow();
    KeyRoom face = KeyRoom.in(typical(panel, first), List.of(), widest);
    boolean straight = panel.field().stream().allMatch(piece -> isLevel(piece.face()));
    Box box = panel.spec().outline().box();
    for (OpeningSpec opening : panel.spec().openings()) {
      box = box.and(opening.outline().box());
    }
    List<Double> columns = straight ? columns(panel, box, first.piece().course()) : List.of();
    return new PanelFacts(panel, first, box, keys, face, straight, columns, straight ? courses(panel) : List.of());
  }

  /** The same panel started with another tile, one that a single sheet shows whole. */
  PanelFacts startingWith(FirstTile other) {
    return new PanelFacts(panel, other, box, keys, face, straight, columns, courses);
  }

  /** Whether it lies on the floor and is seen from above. */
  boolean floor() {
    return panel.spec().surface().equals("floor");
  }

  /** Where dimensions count from: on walls the datum, on floors the lower left corner of the panel, which is marked. */
  Vec zero() {
    Box edge = panel.spec().outline().box();
    return floor() ? new Vec(edge.minX(), edge.minY()) : first.datum();
  }

  /** The face that stands for all: that of the first tile, and of rings the largest. */
  private static Contour typical(PanelSetOut panel, FirstTile first) {
    return !panel.concentric() ? first.piece().face() : panel.pieces().stream().map(Piece::face)
        .max(Comparator.comparingDouble(Contour::area)).orElseThrow();
  }

  private static boolean isLevel(Contour face) {
    Vec side = face.segments().get(0).end().minus(face.segments().get(0).start());
    return Math.abs(side.x() * side.y()) < 1e-9;
  }

  private static List<Double> courses(PanelSetOut panel) {
    TreeSet<Double> joints = new TreeSet<>();
    for (Piece piece : panel.field()) {
      joints.add(hundredths(piece.face().box().minY() - panel.spec().joint() / 2));
    }
    return List.copyOf(joints);
  }

  /** Joints that are met in every course that reaches past them; if there are none, the joints of one course. */
  private static List<Double> columns(PanelSetOut panel, Box box, int course) {
    Map<Integer, Set<Double>> byCourse = new HashMap<>();
    for (Piece piece : panel.field()) {
      Set<Double> joints = byCourse.computeIfAbsent(piece.course(), number -> new HashSet<>());
      joints.add(hundredths(piece.face().box().minX() - panel.spec().joint() / 2));
      joints.add(hundredths(piece.face().box().maxX() + panel.spec().joint() / 2));
    }
    TreeSet<Double> through = new TreeSet<>();
    byCourse.values().forEach(through::addAll);
    byCourse.values().forEach(joints -> through.removeIf(joint -> passes(joints, joint)));
    through.removeIf(joint -> joint <= box.minX() || joint >= box.maxX());
    return List.copyOf(through.isEmpty() ? new TreeSet<>(byCourse.get(course)) : through);
  }

  private static boolean passes(Set<Double> joints, double joint) {
    return !joints.contains(joint) && joints.stream().anyMatch(other -> other < joint)
        && joints.stream().anyMatch(other -> other > joint);
  }

  private static double hundredths(double place) {
    return Math.rint(place * 100) / 100;
  }

  /** How many pieces cannot hold their key at a reduction. */
  long outside(double reduction) {
    return keys.stream().filter(room -> !room.fits(reduction)).count();
  }
}
