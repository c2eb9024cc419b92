// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import muralbench.setout.KeyScheme;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.Piece;
import muralbench.setout.bond.Cell;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Transfer;
import muralbench.setout.geometry.Vec;

/**
 * Carries the border of a panel over to another place and keys it anew: in a mirrored one the numbers run clockwise again,
 * from the lower left corner, or from the top of a circle.
 */
final class RepeatedBand {
  private static final double ON_AXIS = 1e-6;
  private static final double STEP = 1e-3;

  private final PanelSpec panel;
  private final PanelSetOut other;
  private final Transfer to;
  private final KeyScheme scheme = KeyScheme.coursePosition();

  RepeatedBand(PanelSpec panel, PanelSetOut other, Transfer to) {
    this.panel = panel;
    this.other = other;
    this.to = to;
  }

  /** The pieces, row by row in the order of their numbers. */
  List<Piece> pieces() {
    Map<Integer, TreeMap<Integer, List<Piece>>> rows = new TreeMap<>();
    other.pieces().stream().filter(Piece::inBorder).forEach(piece -> rows
        .computeIfAbsent(piece.row(), any -> new TreeMap<>())
        .computeIfAbsent(piece.position(), any -> new ArrayList<>()).add(piece));
    List<Piece> pieces = new ArrayList<>();
    rows.values().forEach(row -> row(row, pieces));
    return pieces;
  }

  private void row(TreeMap<Integer, List<Piece>> row, List<Piece> pieces) {
    Map<Integer, Integer> numbers = numbers(row);
    List<Piece> renamed = new ArrayList<>();
    for (List<Piece> tile : row.values()) {
      List<Piece> parts = new ArrayList<>(tile);
      parts.sort(Comparator.comparing(piece -> to.of(piece.outline()).box(), Box.FROM_LEFT));
      for (int part = 0; part < parts.size(); part++) {
        renamed.add(piece(parts.get(part), numbers.get(parts.get(part).position()), row.lastKey(), part));
      }
    }
    renamed.sort(Comparator.comparingInt(Piece::position));
    pieces.addAll(renamed);
  }

  private Piece piece(Piece piece, int number, int last, int part) {
    Contour face = to.of(piece.face());
    Motion placed = Motion.shift(new Vec(face.box().minX(), face.box().minY()));
    Cell cell = new Cell(-piece.row(), number, face.moved(placed.inverse()), piece.cell().part());
    return new Piece(scheme.borderKey(panel.id(), piece.row(), number, last, part), 0, number, piece.kind(), piece.tile(),
        piece.area(), to.of(piece.outline()), piece.holes().stream().map(to::of).toList(), cell, placed, piece.row());
  }

  /** The new number of each tile of a row. */
  private Map<Integer, Integer> numbers(TreeMap<Integer, List<Piece>> row) {
    List<Integer> order = new ArrayList<>(row.keySet());
    if (to.mirrored()) {
      int first = first(row);
      Collections.reverse(order);
      Collections.rotate(order, -order.indexOf(first));
    }
    Map<Integer, Integer> numbers = new HashMap<>();
    List<Integer> free = List.copyOf(row.keySet());
    for (int i = 0; i < order.size(); i++) {
      numbers.put(order.get(i), free.get(i));
    }
    return numbers;
  }

  /** The tile that comes first in the mirror image: one on the axis stays first; else the one in the lower left corner. */
  private int first(TreeMap<Integer, List<Piece>> row) {
    double axis = other.spec().outline().box().centre().x();
    Piece first = row.firstEntry().getValue().get(0);
    if (Math.abs(first.face().box().centre().x() - axis) < ON_AXIS) {
      return row.firstKey();
    }
    Comparator<Box> corner = Comparator.<Box>comparingDouble(box -> Math.rint((box.minX() + box.minY()) / STEP))
        .thenComparing(Comparator.comparingDouble(Box::height).reversed());
    return row.entrySet().stream()
        .min(Comparator.comparing(tile -> to.of(tile.getValue().get(0).face()).box(), corner)).orElseThrow().getKey();
  }
}
