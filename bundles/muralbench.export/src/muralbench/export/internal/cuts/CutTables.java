// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import muralbench.base.length.LengthUnit;
import muralbench.export.internal.PlainNumber;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.geometry.Box;
import muralbench.setout.order.MadePiece;
import muralbench.setout.order.MadeTile;
import muralbench.setout.order.MadeUp;
import muralbench.setout.order.OrderLine;
import muralbench.setout.order.OrderList;

/** The tables of the cutting list. */
final class CutTables {
  private static final String INCH_AREA = "sq in";
  private static final String MILLIMETRE_AREA = "mm2";
  private static final int QUARTER = 90;

  private final MuralSetOut setOut;
  private final List<CutGroup> groups;
  private final List<MadeUp> made;
  private final LengthUnit unit;

  CutTables(MuralSetOut setOut, List<CutGroup> groups) {
    this.setOut = setOut;
    this.groups = groups;
    this.made = setOut.panels().stream().map(MadeUp::of).toList();
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
    int tiles = 0;
    for (int i = 0; i < made.size(); i++) {
      PanelSetOut panel = setOut.panels().get(i);
      rows.add(List.of(panel.spec().id(), panel.spec().title(), panel.pieces().size(), panel.whole(), panel.cut(),
          made.get(i).tiles().size()));
      tiles += made.get(i).tiles().size();
    }
    rows.add(List.of("", "", setOut.pieces(), setOut.whole(), setOut.cut(), tiles));
    return new Table(List.of("panel", "title", "pieces", "whole", "cut", "tiles_to_order"), rows);
  }

  /** One row for each kind of tile and each other part that a bond lays, such as {@code T6 dot}. */
  Table tiles() {
    Map<String, int[]> counts = new TreeMap<>();
    for (PanelSetOut panel : setOut.panels()) {
      panel.pieces().forEach(piece -> counts.computeIfAbsent(piece.tile(), tile -> new int[2])[0]++);
    }
    made.forEach(panel -> panel.tiles().forEach(tile -> counts.get(tile.tile())[1]++));
    List<List<Object>> rows = new ArrayList<>();
    counts.forEach((tile, count) -> rows.add(List.of(tile, count[0], count[1])));
    return new Table(List.of("tile", "pieces", "tiles_to_order"), rows);
  }

  /**
   * One row for each kind of tile, with its spares and boxes; a part of a bond, such as a dot, is a kind too.
   */
  Table order() {
    List<List<Object>> rows = new ArrayList<>();
    for (OrderLine line : OrderList.of(setOut, made)) {
      String percent = line.percents().stream().map(BigDecimal::toPlainString).collect(Collectors.joining(" / "));
      rows.add(List.of(line.tile(), line.laid(), line.least(), percent, line.spares(), line.ordered(),
          line.box() == 0 ? "" : line.box(), line.box() == 0 ? "" : line.boxes()));
    }
    return new Table(List.of("tile", "laid", "least", "spare_percent", "spares", "order", "box", "boxes"), rows);
  }

  /**
   * One row for every piece that comes from a tile together with others, the pieces of one tile below each other: how
   * far from the left and the lower edge of the tile the rectangle around the piece lies, and by how many degrees
   * counter-clockwise it is turned from how it is drawn.
   */
  Table madeUp() {
    List<List<Object>> rows = new ArrayList<>();
    for (MadeUpList.Numbered tile : shared().tiles()) {
      for (MadePiece piece : tile.tile().pieces()) {
        rows.add(madeUp(tile.number(), tile.panel(), tile.tile(), piece));
      }
    }
    return new Table(List.of("made_up", "panel", "tile", "tile_width", "tile_height", "key", "left", "below", "width",
        "height", "turned", "left_value", "below_value", "width_value", "height_value", "unit"), rows);
  }

  /** The tiles that several pieces are made from. */
  MadeUpList shared() {
    return MadeUpList.of(setOut, made);
  }

  private List<Object> madeUp(int number, String panel, MadeTile tile, MadePiece piece) {
    List<Measure> place = Stream.of(piece.place().minX(), piece.place().minY(), piece.place().width(),
        piece.place().height()).map(length -> Measure.of(length, unit)).toList();
    List<Object> row = new ArrayList<>(List.of(number, panel, tile.tile(), Measure.of(tile.width(), unit).text(),
        Measure.of(tile.height(), unit).text(), piece.key()));
    place.forEach(measure -> row.add(measure.text()));
    row.add(piece.quarters() * QUARTER);
    place.forEach(measure -> row.add(measure.value()));
    row.add(unit.symbol());
    return row;
  }

  /** To 0.01 sq in or 1 mm2. */
  private double area(double squareMillimetres) {
    double area = squareMillimetres / (unit.millimetres() * unit.millimetres());
    return Double.parseDouble(PlainNumber.rounded(area, unit == LengthUnit.INCH ? 2 : 0));
  }
}
