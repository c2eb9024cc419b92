// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import muralbench.setout.Piece;
import muralbench.setout.TileSpec;

/**
 * Gathers pieces one by one. Pieces are looked for among those of the same tile, number of holes and nearly the same
 * area, so that thousands of pieces are compared with a few each.
 */
final class CutGroups {
  private record Bucket(String tile, int holes, long area) {}

  private record Group(int number, Piece first, CutShape shape, TileSpec tile, List<String> keys) {
    CutGroup done() {
      FacePose pose = FacePose.of(first, shape, tile);
      return new CutGroup(number, first.kind(), first.tile(), first.area(), pose.face(), pose.outline(), pose.holes(),
          keys);
    }
  }

  private final List<Group> groups = new ArrayList<>();
  private final Map<Bucket, List<Group>> buckets = new HashMap<>();

  void add(Piece piece, TileSpec tile) {
    CutShape shape = CutShape.of(piece);
    long cell = (long) Math.floor(piece.area() / areaStep(tile));
    Group found = find(piece, shape, cell);
    if (found == null) {
      found = new Group(groups.size() + 1, piece, shape, tile, new ArrayList<>());
      groups.add(found);
      buckets.computeIfAbsent(bucket(piece, cell), any -> new ArrayList<>()).add(found);
    }
    found.keys().add(piece.key());
  }

  /**
   * Moving the edge by the tolerance changes the area by the tolerance times its length; for an edge up to twice as
   * long as that of the tile this is less than the step, so that neighbouring steps hold all that may fit.
   */
  private static double areaStep(TileSpec tile) {
    return CutShape.TOLERANCE * 4 * (tile.width() + tile.height());
  }

  private Group find(Piece piece, CutShape shape, long cell) {
    Group found = null;
    for (long near = cell - 1; near <= cell + 1; near++) {
      for (Group group : buckets.getOrDefault(bucket(piece, near), List.of())) {
        if ((found == null || group.number() < found.number()) && shape.sameAs(group.shape())) {
          found = group;
        }
      }
    }
    return found;
  }

  private static Bucket bucket(Piece piece, long area) {
    return new Bucket(piece.tile(), piece.holes().size(), area);
  }

  List<CutGroup> groups() {
    return groups.stream().map(Group::done).toList();
  }
}
