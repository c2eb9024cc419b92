// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.board;

import java.util.ArrayList;
import java.util.List;
import muralbench.setout.OpeningSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;

/** Finds room for a level row of hanging points in the upper part of a board. */
final class HangingPoints {
  /** Wanted heights of the row in parts of 48 of the height of the board, from 5/6 down to just above the middle. */
  private static final int PARTS = 48;
  private static final int HIGHEST = 40;
  private static final int LOWEST = 25;
  /** How far from an edge a point stays, mm: 2 in, as for fasteners near corners in a backer maker's guide. */
  private static final double CLEAR = 50.8;
  private static final double CHORD_ERROR = 0.1;
  private static final int ROUND = 8;

  private final Box board;
  private final double reveal;
  private final List<Vec> outline;
  private final List<List<Vec>> openings;

  HangingPoints(PanelSetOut panel) {
    reveal = panel.spec().board().reveal();
    board = panel.spec().outline().box().grown(reveal);
    outline = panel.spec().outline().points(CHORD_ERROR);
    openings = panel.spec().openings().stream().map(OpeningSpec::outline).map(edge -> edge.points(CHORD_ERROR)).toList();
  }

  /**
   * A row of points, each in the middle of an equal share of the width, so that each carries as much; empty if no height
   * in the upper half has room for all of them.
   *
   * @return points from the lower left corner of the rectangle around the board, from the left
   */
  List<Vec> row(int count) {
    for (int part = HIGHEST; part >= LOWEST; part--) {
      List<Vec> row = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        row.add(new Vec(board.width() * (2 * i + 1) / (2 * count), board.height() * part / PARTS));
      }
      if (row.stream().allMatch(this::hasRoom)) {
        return row;
      }
    }
    return List.of();
  }

  private boolean hasRoom(Vec point) {
    Vec at = point.plus(new Vec(board.minX(), board.minY()));
    for (int i = 0; i < ROUND; i++) {
      double angle = 2 * Math.PI * i / ROUND;
      Vec out = new Vec(Math.cos(angle), Math.sin(angle));
      if (!inside(outline, at.plus(out.times(Math.max(0, CLEAR - reveal))))
          || openings.stream().anyMatch(edge -> inside(edge, at.plus(out.times(CLEAR))) || inside(edge, at))) {
        return false;
      }
    }
    return true;
  }

  private static boolean inside(List<Vec> corners, Vec point) {
    boolean inside = false;
    Vec a = corners.get(corners.size() - 1);
    for (Vec b : corners) {
      if (a.y() > point.y() != b.y() > point.y()
          && point.x() < a.x() + (b.x() - a.x()) * (point.y() - a.y()) / (b.y() - a.y())) {
        inside = !inside;
      }
      a = b;
    }
    return inside;
  }
}
