// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;

/** Joins strands end to end into closed lines. Ends within {@link #TOLERANCE} of each other meet. */
final class Chains {
  /** How far ends may lie apart and still meet, mm. */
  static final double TOLERANCE = 0.01;

  /** A place where ends meet. */
  private static final class Joint {
    private final Spot spot;
    private final List<Integer> strands = new ArrayList<>();

    Joint(Spot spot) {
      this.spot = spot;
    }
  }

  private record Square(long column, long row) {}

  private final List<Strand> open;
  private final Map<Square, List<Joint>> grid = new HashMap<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<Joint> starts = new ArrayList<>();
  private final List<Joint> ends = new ArrayList<>();

  private Chains(List<Strand> open) {
    this.open = open;
    for (int i = 0; i < open.size(); i++) {
      starts.add(joint(open.get(i).start(), i));
      ends.add(joint(open.get(i).end(), i));
    }
  }

  /**
   * The closed lines.
   *
   * @param units of the places in errors
   * @throws InputException if an end is loose, or more than two meet
   */
  static List<Strand> closed(List<Strand> strands, LengthUnit units, DxfProblem problem) throws InputException {
    List<Strand> closed = new ArrayList<>(strands.stream().filter(Strand::closed).toList());
    Chains chains = new Chains(strands.stream().filter(strand -> !strand.closed()).toList());
    chains.check(units, problem);
    closed.addAll(chains.walk());
    return closed;
  }

  private Joint joint(Spot spot, int strand) {
    long column = (long) Math.floor(spot.x() / TOLERANCE);
    long row = (long) Math.floor(spot.y() / TOLERANCE);
    for (long x = column - 1; x <= column + 1; x++) {
      for (long y = row - 1; y <= row + 1; y++) {
        for (Joint near : grid.getOrDefault(new Square(x, y), List.of())) {
          if (near.spot.distance(spot) <= TOLERANCE) {
            near.strands.add(strand);
            return near;
          }
        }
      }
    }
    Joint joint = new Joint(spot);
    joint.strands.add(strand);
    grid.computeIfAbsent(new Square(column, row), square -> new ArrayList<>()).add(joint);
    joints.add(joint);
    return joint;
  }

  private void check(LengthUnit units, DxfProblem problem) throws InputException {
    for (Joint joint : joints) {
      if (joint.strands.size() > 2) {
        throw problem.of("branch", "count", joint.strands.size(), "place", place(joint.spot, units));
      }
    }
    List<Joint> loose = joints.stream().filter(joint -> joint.strands.size() == 1).toList();
    if (!loose.isEmpty()) {
      throw problem.of("open", "ends", loose.size(), "place", place(loose.get(0).spot, units), "other",
          place(loose.get(1).spot, units));
    }
  }

  private static String place(Spot spot, LengthUnit units) {
    return "(" + LengthText.shown(spot.x(), units) + ", " + LengthText.shown(spot.y(), units) + ")";
  }

  private List<Strand> walk() {
    List<Strand> closed = new ArrayList<>();
    boolean[] used = new boolean[open.size()];
    for (int first = 0; first < used.length; first++) {
      List<Edge> edges = new ArrayList<>();
      Joint at = starts.get(first);
      for (int next = first; next >= 0 && !used[next]; next = other(at, next)) {
        used[next] = true;
        boolean ahead = starts.get(next) == at;
        append(edges, ahead ? open.get(next) : open.get(next).reversed());
        at = ahead ? ends.get(next) : starts.get(next);
      }
      if (!edges.isEmpty()) {
        int last = edges.size() - 1;
        edges.set(last, edges.get(last).endingAt(edges.get(0).from()));
        closed.add(new Strand(edges, true));
      }
    }
    return closed;
  }

  /** The strand that goes on from a joint. */
  private static int other(Joint at, int strand) {
    return at.strands.get(at.strands.get(0) == strand ? 1 : 0);
  }

  private static void append(List<Edge> edges, Strand strand) {
    if (!edges.isEmpty()) {
      edges.set(edges.size() - 1, edges.get(edges.size() - 1).endingAt(strand.start()));
    }
    edges.addAll(strand.edges());
  }
}
