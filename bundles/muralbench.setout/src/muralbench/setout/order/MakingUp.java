// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.bond.Cell;
import muralbench.setout.cut.FacePose;
import muralbench.setout.geometry.Box;

/** Finds which pieces of one panel come from one tile; see {@link MadeUp#of}. */
final class MakingUp {
  /** A size of face of one kind of tile, its longer side across. */
  private record Blank(String tile, double width, double height) {
    static Blank of(Piece piece, Box face) {
      return new Blank(piece.tile(), round(Math.max(face.width(), face.height())),
          round(Math.min(face.width(), face.height())));
    }
  }

  /** Cut pieces that come from one tile. */
  private record Shared(Blank blank, List<SawnPiece> pieces) {}

  private static final double ROUNDING = 1e6;

  private final PanelSetOut panel;
  private final Map<Cell, List<Piece>> cells = new LinkedHashMap<>();
  private final Map<Blank, List<SawnPiece>> sawn = new LinkedHashMap<>();
  private final List<List<Piece>> laid = new ArrayList<>();
  private final List<Shared> shared = new ArrayList<>();

  MakingUp(PanelSetOut panel) {
    this.panel = panel;
    for (Piece piece : panel.pieces()) {
      cells.computeIfAbsent(piece.cell(), cell -> new ArrayList<>()).add(piece);
    }
    if (panel.spec().making().afterCutting()) {
      cells.values().forEach(this::sort);
      sawn.forEach(this::share);
      keepTogether();
    }
    if (!panel.spec().making().afterCutting() || count() > cells.size()) {
      shared.clear();
      laid.clear();
      laid.addAll(cells.values());
    }
  }

  /** How many tiles there are. */
  int count() {
    return laid.size() + shared.size();
  }

  MadeUp made() {
    Map<String, Integer> order = new HashMap<>();
    panel.pieces().forEach(piece -> order.put(piece.key(), order.size()));
    List<MadeTile> tiles = new ArrayList<>();
    laid.forEach(cell -> tiles.add(asLaid(cell)));
    shared.forEach(tile -> tiles.add(sawn(tile)));
    tiles.sort(Comparator.comparing(tile -> first(tile, order)));
    return new MadeUp(tiles, new LeastTiles().of(panel));
  }

  /** Pieces that can be sawn side by side with others are put aside; the rest of a cell takes a tile. */
  private void sort(List<Piece> cell) {
    List<SawnPiece> apart = new ArrayList<>();
    for (Piece piece : cell) {
      if (piece.kind() != PieceKind.WHOLE && piece.holes().isEmpty()) {
        SawnPiece.of(piece, panel.spec().making()).ifPresent(apart::add);
      }
    }
    if (apart.size() < cell.size()) {
      laid.add(cell);
    } else {
      apart.forEach(piece -> sawn.computeIfAbsent(Blank.of(piece.piece(), piece.face()), any -> new ArrayList<>())
          .add(piece));
    }
  }

  private void share(Blank blank, List<SawnPiece> pieces) {
    SawnTiles tiles = new SawnTiles(blank.width(), blank.height(), panel.spec().making().kerf());
    for (List<Integer> group : tiles.share(pieces.stream().map(SawnPiece::rect).toList())) {
      shared.add(new Shared(blank, group.stream().map(pieces::get).toList()));
    }
  }

  /** Pieces of one cell that all lie alone come from one tile, as they lie on the wall. */
  private void keepTogether() {
    Map<Piece, Shared> alone = new IdentityHashMap<>();
    shared.stream().filter(tile -> tile.pieces().size() == 1)
        .forEach(tile -> alone.put(tile.pieces().get(0).piece(), tile));
    Set<Shared> parted = Collections.newSetFromMap(new IdentityHashMap<>());
    for (List<Piece> cell : cells.values()) {
      if (cell.size() > 1 && cell.stream().allMatch(alone::containsKey)) {
        cell.forEach(piece -> parted.add(alone.get(piece)));
        laid.add(cell);
      }
    }
    shared.removeIf(parted::contains);
  }

  private static MadeTile asLaid(List<Piece> cell) {
    List<MadePiece> pieces = new ArrayList<>();
    Box face = null;
    for (Piece piece : cell) {
      FacePose pose = FacePose.of(piece);
      face = pose.face().box();
      pieces.add(new MadePiece(piece.key(), pose.outline().box(), 0));
    }
    return new MadeTile(cell.get(0).tile(), face.width(), face.height(), pieces, true);
  }

  private static int first(MadeTile tile, Map<String, Integer> order) {
    return tile.pieces().stream().mapToInt(piece -> order.get(piece.key())).min().orElseThrow();
  }

  private MadeTile sawn(Shared tile) {
    Blank blank = tile.blank();
    List<SawnRect> rects = tile.pieces().stream().map(SawnPiece::rect).toList();
    SawPlan plan = new SawPlan(rects, blank.width(), blank.height(), panel.spec().making().kerf());
    List<MadePiece> made = new ArrayList<>();
    for (SawPlan.Placed placed : plan.places((1 << rects.size()) - 1)) {
      made.add(new MadePiece(tile.pieces().get(placed.item()).piece().key(), placed.place(), placed.quarters()));
    }
    made.sort(Comparator.comparingDouble((MadePiece piece) -> round(piece.place().minY()))
        .thenComparingDouble(piece -> round(piece.place().minX())));
    return new MadeTile(blank.tile(), blank.width(), blank.height(), made, false);
  }

  static double round(double length) {
    return Math.rint(length * ROUNDING) / ROUNDING;
  }
}
