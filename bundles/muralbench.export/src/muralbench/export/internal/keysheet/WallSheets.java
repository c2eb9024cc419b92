// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.Messages;
import muralbench.export.internal.pdf.Canvas;
import muralbench.export.internal.pdf.SheetSize;
import muralbench.setout.PanelGap;
import muralbench.setout.geometry.Box;

/** Draws the first sheets: the wall as a whole and the index of all sheets. */
final class WallSheets {
  private static final double HEADING = 10;

  private final PrintTexts print;
  private final Messages texts;
  private final WallPlan wall;
  private final List<PanelPlan> panels;
  private final KeyLetters letters;

  WallSheets(PrintTexts print, WallPlan wall, List<PanelPlan> panels, KeyLetters letters) {
    this.print = print;
    this.texts = print.texts();
    this.wall = wall;
    this.panels = panels;
    this.letters = letters;
  }

  SheetSize size() {
    return wall.layout().size();
  }

  /** How many sheets come before the panels. */
  int count() {
    return wall.sheets(panels.size());
  }

  /** How many sheets there are in all. */
  int countOfAll() {
    return count() + panels.stream().mapToInt(plan -> plan.sheets().size()).sum();
  }

  /** Draws one of the first sheets, {@code index} from 0. */
  void draw(Canvas canvas, int index) throws IOException {
    SheetFurniture furniture = new SheetFurniture(canvas, wall.layout());
    Box drawing = wall.layout().drawing();
    List<List<String>> lines = lines();
    int from = index == 0 ? 0 : wall.indexRows() - 1 + (index - 1) * wall.rowsOfFurtherSheets();
    int rows = index == 0 ? wall.indexRows() - 1 : wall.rowsOfFurtherSheets();
    List<List<String>> shown = lines.subList(Math.min(from, lines.size()), Math.min(from + rows, lines.size()));
    double top = index == 0 ? drawing.minY() + wall.indexRows() * WallPlan.ROW + 2 : drawing.maxY() - HEADING;
    if (index == 0) {
      drawViews(canvas);
    }
    furniture.heading(print.project(), texts.text(heading()));
    new SheetIndex(texts, print.units())
        .draw(canvas, new Box(drawing.minX() + 3, drawing.minY(), drawing.maxX() - 3, top), shown);
    furniture.draw(print.titleBlock(texts.text("title.wall"), wall.scale().name(), index + 1, countOfAll()),
        notes(), wall.layout().legend(), texts.text("safety"));
  }

  private String heading() {
    return !wall.wall() ? "heading.floor" : wall.floor() ? "heading.both" : "heading.wall";
  }

  private void drawViews(Canvas canvas) throws IOException {
    for (WallPlan.View view : wall.views()) {
      WallDrawing drawing = new WallDrawing(canvas, view, letters, texts);
      drawing.draw(print.units());
      if (wall.wall() && !view.wall()) {
        drawing.caption(texts.text("caption.floor"));
      }
    }
  }

  private List<List<String>> lines() {
    SheetIndex index = new SheetIndex(texts, print.units());
    List<List<String>> lines = new ArrayList<>();
    int number = count() + 1;
    for (PanelPlan plan : panels) {
      lines.add(index.line(plan, number));
      number += plan.sheets().size();
    }
    return lines;
  }

  /** The gaps that a grid runs on behind. */
  private List<String> grids() {
    List<String> grids = new ArrayList<>();
    for (PanelGap gap : PanelGap.of(panels.stream().map(plan -> plan.facts().panel()).toList())) {
      gap.modules().ifPresent(modules -> grids.add(texts.text("note.wall.grid.gap", "left", gap.left().spec().id(),
          "right", gap.right().spec().id(), "modules",
          BigDecimal.valueOf(modules).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString())));
    }
    return grids;
  }

  private List<String> notes() {
    int pieces = panels.stream().mapToInt(plan -> plan.facts().panel().pieces().size()).sum();
    int cut = panels.stream().mapToInt(plan -> plan.facts().panel().cut()).sum();
    List<String> notes = new ArrayList<>(List.of(
        texts.text("note.wall.counts", "panels", panels.size(), "pieces", pieces, "whole", pieces - cut, "cut", cut)));
    if (wall.wall()) {
      notes.add(texts.text("note.wall.heights"));
    }
    if (wall.floor()) {
      notes.add(texts.text("note.wall.floor"));
    }
    List<String> grids = grids();
    if (!grids.isEmpty()) {
      notes.add(texts.text("note.wall.grid", "list", String.join("; ", grids)));
    }
    notes.add(texts.text("note.wall.order"));
    notes.add(texts.text(wall.wall() ? "note.keys" : "note.keys.floor"));
    return notes;
  }
}
