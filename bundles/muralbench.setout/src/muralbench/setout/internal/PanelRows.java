// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import muralbench.setout.Piece;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * The cut cells of a panel in their courses, in which some cells can be cut anew. What such a change does not reach is
 * not named anew: the pieces stay the same objects.
 */
final class PanelRows {
  /** A cell and where it stands: its row from the bottom and its place in the row, from 0. */
  static final class Place {
    private final int row;
    private final int index;
    private final CutCell cell;
    private final Envelope box;

    private Place(int row, int index, CutCell cell, Envelope box) {
      this.row = row;
      this.index = index;
      this.cell = cell;
      this.box = box;
    }

    CutCell cell() {
      return cell;
    }

    /** The box around its face on the wall. */
    Envelope box() {
      return box;
    }
  }

  private final PieceNaming naming;
  private final List<List<CutCell>> rows;
  private final List<List<Piece>> named = new ArrayList<>();
  private final int most;
  private final STRtree places = new STRtree();

  PanelRows(PieceNaming naming, List<CutCell> cells) {
    this.naming = naming;
    rows = List.copyOf(naming.courses(cells));
    most = most(rows);
    for (int row = 0; row < rows.size(); row++) {
      List<CutCell> cellsOfRow = rows.get(row);
      named.add(named(cellsOfRow, row + 1, rows.size(), most));
      for (int i = 0; i < cellsOfRow.size(); i++) {
        Envelope box = CellCutter.envelope(cellsOfRow.get(i).cell().face().moved(naming.placed()));
        places.insert(box, new Place(row, i, cellsOfRow.get(i), box));
      }
    }
    places.build();
  }

  /** The cells whose faces come near a box. */
  List<Place> near(Envelope box) {
    List<Place> near = new ArrayList<>();
    places.query(box, place -> near.add((Place) place));
    return near;
  }

  /**
   * The pieces after a change.
   *
   * @param changed the cells that are cut anew, null for those of which nothing is left
   */
  List<Piece> pieces(Map<Place, CutCell> changed) {
    Map<Integer, List<CutCell>> anew = new HashMap<>();
    changed.forEach((place, cell) -> anew
        .computeIfAbsent(place.row, row -> new ArrayList<>(rows.get(row))).set(place.index, cell));
    anew.values().forEach(row -> row.removeIf(Objects::isNull));
    List<List<CutCell>> all = new ArrayList<>(rows);
    anew.forEach(all::set);
    int courses = (int) all.stream().filter(row -> !row.isEmpty()).count();
    int mostNow = most(all);
    boolean numbered = courses == rows.size() && mostNow == most;
    List<Piece> pieces = new ArrayList<>();
    int course = 0;
    for (int row = 0; row < all.size(); row++) {
      if (!all.get(row).isEmpty()) {
        course++;
        pieces.addAll(numbered && !anew.containsKey(row) ? named.get(row)
            : named(all.get(row), course, courses, mostNow));
      }
    }
    return pieces;
  }

  private List<Piece> named(List<CutCell> row, int course, int courses, int most) {
    List<Piece> pieces = new ArrayList<>(row.size());
    for (int i = 0; i < row.size(); i++) {
      naming.name(row.get(i), course, courses, i + 1, most, pieces);
    }
    return pieces;
  }

  private static int most(List<List<CutCell>> rows) {
    return rows.stream().mapToInt(List::size).max().orElse(0);
  }
}
