// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.util.List;
import java.util.OptionalInt;
import muralbench.base.Messages;
import muralbench.export.internal.pdf.Canvas;
import muralbench.setout.geometry.Box;

/** Draws the sheets of a panel. */
final class PanelSheetDrawing {
  private final PrintTexts print;
  private final Messages texts;
  private final PanelPlan plan;
  private final int firstNumber;
  private final int count;
  private final RunningDimensions across;
  private final RunningDimensions up;

  /**
   * A drawing.
   *
   * @param firstNumber number of the panel's first sheet in the whole document
   * @param count number of sheets in the whole document
   */
  PanelSheetDrawing(PrintTexts print, PanelPlan plan, int firstNumber, int count) {
    this.print = print;
    this.texts = print.texts();
    this.plan = plan;
    this.firstNumber = firstNumber;
    this.count = count;
    this.across = RunningDimensions.across(plan.facts());
    this.up = RunningDimensions.up(plan.facts());
  }

  void draw(Canvas canvas, int index) throws IOException {
    SheetPlan sheet = plan.sheets().get(index);
    PanelFacts facts = plan.facts();
    ElevationDrawing elevation = new ElevationDrawing(canvas, facts, sheet);
    DimensionDrawing dimensions = new DimensionDrawing(canvas, sheet.placing(), sheet.window(),
        sheet.gutters().labels(), print.units());
    ReferenceLines lines = new ReferenceLines(canvas, plan, sheet, firstNumber);
    dimensions.across(across.withSides(facts.panel().spec().openings(), sheet.window()), zero(plan.zeroAcross(sheet)));
    dimensions.up(up.withHeights(facts.panel().spec().openings(), sheet.window()), zero(plan.zeroUp(sheet)));
    elevation.drawWork();
    lines.drawReferences(print.units());
    lines.drawMatchLines();
    elevation.drawTexts();
    furnish(canvas, sheet, index);
  }

  /** Words that tell where the zero of an axis is, or nothing. */
  private String zero(OptionalInt other) {
    String key = plan.facts().floor() ? "zero.elsewhere.floor" : "zero.elsewhere";
    return other.isPresent() ? texts.text(key, "sheet", firstNumber + other.getAsInt()) : "";
  }

  private List<String> notes(SheetPlan sheet, int index) {
    PanelNotes notes = new PanelNotes(texts, print.units());
    int firstTile = firstNumber + plan.firstTileSheet();
    return index == 0 ? notes.of(plan.facts(), sheet.window(), firstTile)
        : notes.further(plan.facts(), sheet.window(), firstTile, firstNumber);
  }

  private void furnish(Canvas canvas, SheetPlan sheet, int index) throws IOException {
    SheetFurniture furniture = new SheetFurniture(canvas, sheet.layout());
    String name = PrintTexts.name(plan.facts().panel().spec());
    String view = texts.text(plan.facts().floor() ? "seen.above" : "seen.front");
    String aside = texts.text(plan.sheets().size() == 1 ? "heading.panel.whole" : "heading.panel.part",
        "seen", view, "number", index + 1, "count", plan.sheets().size());
    furniture.heading(texts.text("heading.panel", "panel", name), aside);
    boolean parted = plan.sheets().size() > 1;
    furniture.draw(print.titleBlock(name, plan.scale().name(), firstNumber + index, count),
        notes(sheet, index), sheet.layout().notes(parted),
        index == 0 ? texts.text("safety") : texts.text("safety.short", "sheet", firstNumber));
    Box legend = sheet.layout().legend();
    double split = legend.minX() + SheetLayout.LEGEND;
    Legend words = new Legend(canvas, texts, plan.facts().floor(), plan.facts().panel().concentric());
    words.draw(new Box(legend.minX(), legend.minY(), split, legend.maxY()),
        !plan.facts().panel().movement().isEmpty());
    if (parted) {
      Box map = new Box(split + 1, legend.minY(), legend.maxX() - 1, legend.maxY());
      new SheetMap(canvas, plan, firstNumber).draw(map, sheet, texts.text("map.title"));
    }
  }
}
