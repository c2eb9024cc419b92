// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.PlainNumber;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.bond.Cell;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.geometry.Box;
import muralbench.setout.order.Allowances;
import muralbench.setout.order.OrderLine;
import muralbench.setout.order.OrderList;

/** The tables of the cutting list. */
final class CutTables {
  private static final String INCH_AREA = "sq in";
  private static final String MILLIMETRE_AREA = "mm2";

  private final MuralSetOut setOut;
  private final List<CutGroup> groups;
  private final LengthUnit unit;

  CutTables(MuralSetOut setOut, List<CutGroup> groups) {
    this.setOut = setOut;
    this.groups = groups;
    this.unit = setOut.spec().units();
  }

  /** The unit of areas. */
  String areaUnit() {
    return unit == LengthUnit.INCH ? INCH_AREA : MILLIMETRE_AREA;
  }

  /** One row for each shape; width and height as it is drawn on its tile, keys parted by spaces,
   * and again by the turn of their tiles, such as {@code 0: A-01-01 A-01-02; 180: A-05-09}. */
  Table cuts() {
    List<List<Object>> rows = new ArrayList<>();
    for (CutGroup group : groups) {
      Box box = group.outline().box();
      Measure width = Measure.of(box.width(), unit);
      Measure height = Measure.of(box.height(), unit);
      rows.add(List.of(group.number(), group.kind().word(), group.tile(), group.keys().size(), width.text(),
          height.text(), width.value(), height.value(), unit.symbol(), area(group.area()), areaUnit(),
          String.join(" ", group.keys()), byTurn(group)));
    }
    return new Table(List.of("number", "kind", "tile", "quantity", "width", "height", "width_value", "height_value",
        "unit", "area", "area_unit", "keys", "keys_by_turn"), rows);
  }

  private static String byTurn(CutGroup group) {
    return group.lots().stream().map(lot -> PlainNumber.rounded(lot.turn(), 2) + ": " + String.join(" ", lot.keys()))
        .collect(Collectors.joining("; "));
  }

  /** One row for every piece, whole tiles included; width and height as it stands on the wall. Cut ones
   * have the number of their cut, and by how many degrees counter-clockwise the tile is turned from how it hangs before
   * it is cut as drawn. */
  Table pieces() {
    Map<String, List<Object>> cuts = cutsByKey();
    List<List<Object>> rows = new ArrayList<>();
    for (PanelSetOut panel : setOut.panels()) {
      for (Piece piece : panel.pieces()) {
        Measure width = Measure.of(piece.box().width(), unit);
        Measure height = Measure.of(piece.box().height(), unit);
        List<Object> row = new ArrayList<>(List.of(piece.key(), panel.spec().id(), piece.course(), piece.position(),
            piece.kind().word(), piece.tile(), width.text(), height.text(), width.value(), height.value(),
            unit.symbol()));
        row.addAll(cuts.getOrDefault(piece.key(), List.of("", "")));
        rows.add(row);
      }
    }
    return new Table(List.of("key", "panel", "course", "position", "kind", "tile", "width", "height", "width_value",
        "height_value", "unit", "number", "turn"), rows);
  }

  /** For every key of a cut piece the number of its cut and its turn. */
  private Map<String, List<Object>> cutsByKey() {
    Map<String, List<Object>> cuts = new HashMap<>();
    for (CutGroup group : groups) {
      group.lots().forEach(lot -> lot.keys().forEach(key -> cuts.put(key, List.of(group.number(), lot.turn()))));
    }
    return cuts;
  }

  /** One row for each panel and one for all. */
  Table panels() {
    List<List<Object>> rows = new ArrayList<>();
    for (PanelSetOut panel : setOut.panels()) {
      rows.add(List.of(panel.spec().id(), panel.spec().title(), panel.pieces().size(), panel.whole(), panel.cut(),
          panel.tilesToOrder()));
    }
    rows.add(List.of("", "", setOut.pieces(), setOut.whole(), setOut.cut(), setOut.tilesToOrder()));
    return new Table(List.of("panel", "title", "pieces", "whole", "cut", "tiles_to_order"), rows);
  }

  /** One row for each kind of tile and each other part that a bond lays, such as {@code T6 dot}. */
  Table tiles() {
    Map<String, int[]> counts = new TreeMap<>();
    for (PanelSetOut panel : setOut.panels()) {
      Set<Cell> cells = new HashSet<>();
      for (Piece piece : panel.pieces()) {
        int[] count = counts.computeIfAbsent(piece.tile(), tile -> new int[2]);
        count[0]++;
        count[1] += cells.add(piece.cell()) ? 1 : 0;
      }
    }
    List<List<Object>> rows = new ArrayList<>();
    counts.forEach((tile, count) -> rows.add(List.of(tile, count[0], count[1])));
    return new Table(List.of("tile", "pieces", "tiles_to_order"), rows);
  }

  /**
   * One row for each kind of tile, with spares as is common practice; a part of a bond, such as a dot, is a kind too.
   */
  Table order() {
    List<List<Object>> rows = new ArrayList<>();
    for (OrderLine line : OrderList.of(setOut, Allowances.commonPractice())) {
      String percent = line.percents().stream().map(BigDecimal::toPlainString).collect(Collectors.joining(" / "));
      rows.add(List.of(line.tile(), line.laid(), percent, line.spares(), line.ordered()));
    }
    return new Table(List.of("tile", "laid", "spare_percent", "spares", "order"), rows);
  }

  /** To 0.01 sq in or 1 mm2. */
  private double area(double squareMillimetres) {
    double area = squareMillimetres / (unit.millimetres() * unit.millimetres());
    return Double.parseDouble(PlainNumber.rounded(area, unit == LengthUnit.INCH ? 2 : 0));
  }
}
