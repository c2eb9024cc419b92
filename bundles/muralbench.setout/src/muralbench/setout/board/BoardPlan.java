// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.board;

import java.util.List;
import java.util.Optional;
import muralbench.setout.BoardSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;

/**
 * The board of a removable panel as it is planned: to be confirmed by a qualified person, and local codes go before it.
 *
 * @param spec what it is made of
 * @param width of the board, mm
 * @param height of the board, mm
 * @param area of the board less the openings of the panel, mm²
 * @param mass the estimated mass; empty where the thickness of the tile is not known
 * @param points hanging points from the lower left corner of the rectangle around the board, from the left; empty where
 *     no row of them finds room on the board
 */
public record BoardPlan(BoardSpec spec, double width, double height, double area, Optional<PanelMass> mass,
    List<Vec> points) {
  /** A panel hangs from two points at least. */
  private static final int FEWEST = 2;

  public BoardPlan {
    points = List.copyOf(points);
  }

  /** The plan for a panel. */
  public static BoardPlan of(PanelSetOut panel) {
    BoardSpec spec = panel.spec().board();
    Contour outline = panel.spec().outline();
    Box box = outline.box().grown(spec.reveal());
    boolean left = box.width() > 0 && box.height() > 0;
    double area = left ? Math.max(0, panel.area() + grown(outline, spec.reveal())) : 0;
    Optional<PanelMass> mass = panel.spec().tile().thickness() > 0 ? Optional.of(PanelMass.of(panel, area))
        : Optional.empty();
    return new BoardPlan(spec, Math.max(0, box.width()), Math.max(0, box.height()), area, mass,
        new HangingPoints(panel).row(count(spec, mass)));
  }

  /** In pairs about the middle: as many as carry the mass, and two at least. */
  private static int count(BoardSpec spec, Optional<PanelMass> mass) {
    if (mass.isEmpty() || spec.hangerCapacity() == 0) {
      return FEWEST;
    }
    return FEWEST * Math.max(1, (int) Math.ceil(mass.get().total() / (FEWEST * spec.hangerCapacity()) - 1e-9));
  }

  /**
   * How much larger an outline is with its edge moved out, corners kept sharp: the length of the edge times the reveal, and
   * at every corner what the turn of the edge adds.
   */
  private static double grown(Contour outline, double reveal) {
    double corners = 0;
    double turned = 0;
    List<Segment> edges = outline.counterClockwise().segments();
    Segment before = edges.get(edges.size() - 1);
    for (Segment edge : edges) {
      Vec in = before.tangent(1);
      Vec out = edge.tangent(0);
      double turn = Math.atan2(in.cross(out), in.dot(out));
      corners += Math.tan(turn / 2);
      turned += turn;
      before = edge;
    }
    return reveal * outline.length() + reveal * reveal * (corners + (2 * Math.PI - turned) / 2);
  }

  /** What one hanging point carries, kg; empty where the mass is not known or there are no points. */
  public Optional<Double> load() {
    return points.isEmpty() ? Optional.empty() : mass.map(all -> all.total() / points.size());
  }
}
