// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import muralbench.setout.KeyScheme;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;

/**
 * Numbers courses from the bottom and positions from the left, as they stand on the wall whichever way the bond is turned,
 * and names the pieces. Only courses and cells that leave a piece are counted.
 */
final class PieceNaming {
  /** Directions this close to level or plumb are taken as level or plumb. */
  private static final double LEVEL = 1e-9;
  /** A blank may be this much larger than the tile, which is rounding, mm. */
  private static final double SLACK = 1e-6;

  private final PanelSpec panel;
  private final Motion placed;
  private final boolean concentric;
  private final KeyScheme scheme = KeyScheme.coursePosition();

  PieceNaming(PanelSpec panel, Motion placed, boolean concentric) {
    this.panel = panel;
    this.placed = placed;
    this.concentric = concentric;
  }

  /** The movement that takes the bond's coordinates to the wall plane. */
  Motion placed() {
    return placed;
  }

  List<Piece> named(List<CutCell> cells) {
    Collection<List<CutCell>> courses = courses(cells);
    int most = courses.stream().mapToInt(List::size).max().orElse(0);
    List<Piece> pieces = new ArrayList<>(cells.size());
    int course = 0;
    for (List<CutCell> row : courses) {
      course++;
      for (int position = 1; position <= row.size(); position++) {
        name(row.get(position - 1), course, courses.size(), position, most, pieces);
      }
    }
    return pieces;
  }

  /** Adds the pieces of a cell, from the left; courses, position and most as in {@link KeyScheme#key}. */
  void name(CutCell cell, int course, int courses, int position, int most, List<Piece> pieces) {
    List<CutCell.Part> parts = fromLeft(cell.parts());
    for (int part = 0; part < parts.size(); part++) {
      String key = scheme.key(panel.id(), course, courses, position, most, part);
      CutCell.Part cut = parts.get(part);
      pieces.add(new Piece(key, course, position, cut.kind(), tile(cell), cut.area(), cut.outline(), cut.holes(),
          cell.cell(), placed));
    }
  }

  /** The courses from the bottom, each with its cells from the left. */
  Collection<List<CutCell>> courses(List<CutCell> cells) {
    int up = concentric || upOrRight(-placed.sin(), placed.cos()) ? 1 : -1;
    int right = concentric || rightOrUp(placed.cos(), placed.sin()) ? 1 : -1;
    TreeMap<Integer, List<CutCell>> courses = new TreeMap<>();
    for (CutCell cell : cells) {
      courses.computeIfAbsent(up * cell.cell().course(), course -> new ArrayList<>()).add(cell);
    }
    courses.values().forEach(row -> row.sort(Comparator.comparingInt(cell -> right * cell.cell().position())));
    return courses.values();
  }

  /**
   * The tile kind of the panel, or that and what else lies here, such as {@code T6 dot}. What can be cut to shape from the
   * tile, as wedges are, is of its kind.
   */
  private String tile(CutCell cell) {
    String part = cell.cell().part();
    return part.isEmpty() || fromTile(cell.cell().face()) ? panel.tile().id() : panel.tile().id() + ' ' + part;
  }

  /** Whether a face with curved sides can be cut from the tile with one of its sides along a side of the tile. */
  private boolean fromTile(Contour face) {
    return !face.straight() && face.segments().stream().map(side -> side.end().minus(side.start())).anyMatch(chord -> {
      Box blank = face.moved(Motion.turn(-Math.toDegrees(Math.atan2(chord.y(), chord.x())), Vec.ZERO)).box();
      double width = panel.tile().width() + SLACK;
      double height = panel.tile().height() + SLACK;
      return blank.width() <= width && blank.height() <= height || blank.width() <= height && blank.height() <= width;
    });
  }

  private static boolean upOrRight(double x, double y) {
    return Math.abs(y) > LEVEL ? y > 0 : x > 0;
  }

  private static boolean rightOrUp(double x, double y) {
    return Math.abs(x) > LEVEL ? x > 0 : y > 0;
  }

  private static List<CutCell.Part> fromLeft(List<CutCell.Part> parts) {
    if (parts.size() == 1) {
      return parts;
    }
    List<CutCell.Part> sorted = new ArrayList<>(parts);
    sorted.sort(Comparator.comparing(part -> part.outline().box(), Box.FROM_LEFT));
    return sorted;
  }
}
