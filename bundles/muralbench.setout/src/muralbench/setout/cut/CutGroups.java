// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import muralbench.setout.Piece;
import muralbench.setout.cut.CutGroup.Placing;

/**
 * Gathers pieces one by one. Pieces are looked for among those of the same tile, number of holes and nearly the same
 * area, so that thousands of pieces are compared with a few each.
 */
final class CutGroups {
  private record Bucket(String tile, int holes, long area) {}

  private record Group(int number, Piece first, FacePose pose, CutShape shape, List<Placing> placings) {
    CutGroup done() {
      return new CutGroup(number, first.kind(), first.tile(), first.area(), pose.face(), pose.outline(), pose.holes(),
          placings);
    }

    /** The turn that lays another piece as this group is drawn; empty if it is of another shape. */
    OptionalDouble turn(CutShape other) {
      OptionalDouble onFirst = other.turnOnto(shape, pose.turn());
      return onFirst.isEmpty() ? onFirst : OptionalDouble.of(Turn.full(onFirst.getAsDouble() + pose.turn()));
    }
  }

  private final List<Group> groups = new ArrayList<>();
  private final Map<Bucket, List<Group>> buckets = new HashMap<>();

  void add(Piece piece) {
    CutShape shape = CutShape.of(piece);
    long cell = (long) Math.floor(piece.area() / areaStep(piece));
    if (!join(piece, shape, cell)) {
      FacePose pose = FacePose.of(piece);
      Group group = new Group(groups.size() + 1, piece, pose, shape, new ArrayList<>());
      group.placings().add(new Placing(piece.key(), pose.turn()));
      groups.add(group);
      buckets.computeIfAbsent(bucket(piece, cell), any -> new ArrayList<>()).add(group);
    }
  }

  /**
   * Moving the edge by the tolerance changes the area by the tolerance times its length; for an edge up to twice as
   * long as that of the face this is less than the step, so that neighbouring steps hold all that may fit.
   */
  private static double areaStep(Piece piece) {
    return CutShape.TOLERANCE * 2 * piece.cell().face().length();
  }

  /** Adds a piece to the first group of its shape, if there is one. */
  private boolean join(Piece piece, CutShape shape, long cell) {
    List<Group> near = LongStream.rangeClosed(cell - 1, cell + 1)
        .mapToObj(area -> buckets.getOrDefault(bucket(piece, area), List.of())).flatMap(List::stream)
        .sorted(Comparator.comparingInt(Group::number)).toList();
    for (Group group : near) {
      OptionalDouble turn = group.turn(shape);
      if (turn.isPresent()) {
        group.placings().add(new Placing(piece.key(), turn.getAsDouble()));
        return true;
      }
    }
    return false;
  }

  private static Bucket bucket(Piece piece, long area) {
    return new Bucket(piece.tile(), piece.holes().size(), area);
  }

  List<CutGroup> groups() {
    return groups.stream().map(Group::done).toList();
  }
}
