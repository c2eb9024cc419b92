// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.export.internal.pdf.Lettering;
import muralbench.export.internal.pdf.PrintDocument;
import muralbench.setout.PanelSetOut;

/** Installer key sheets as one PDF: the wall with an index of sheets, then every panel piece by piece. */
public final class KeySheetExporter implements Exporter {
  private static final String FILE = "key-sheets.pdf";

  @Override
  public String id() {
    return "key-sheets";
  }

  @Override
  public String label() {
    return texts().text("exporter.label");
  }

  @Override
  public String purpose() {
    return texts().text("exporter.purpose");
  }

  private static Messages texts() {
    return Messages.of(KeySheetExporter.class);
  }

  @Override
  public void export(ExportContext context, OutputFolder output, Progress progress) throws InputException, IOException {
    List<PanelSetOut> panels = context.setOut().panels();
    if (panels.isEmpty()) {
      throw new InputException("", texts().text("nothing.problem"), texts().text("nothing.remedy"));
    }
    try (Lettering lettering = Lettering.open()) {
      KeyLetters letters = new KeyLetters(lettering);
      progress.begin(texts().text("progress.task"), 2 * panels.size() + 1);
      List<PanelPlan> plans = plan(context, letters, progress);
      WallPlan wall = WallPlan.of(panels, context.paper(), context.units());
      PrintTexts print = new PrintTexts(context);
      WallSheets first = new WallSheets(print, wall, plans, letters);
      String title = texts().text("document.title", "project", print.project());
      try (PrintDocument document = new PrintDocument(title, purpose(), context.date(), lettering)) {
        draw(document, print, first, plans, progress);
        try (OutputStream out = output.create(FILE)) {
          document.save(out);
        }
      }
    }
  }

  private static List<PanelPlan> plan(ExportContext context, KeyLetters letters, Progress progress)
      throws InputException, IOException {
    PanelPlanner planner = new PanelPlanner(letters, context.units(), PanelPlanner.MOST_SHEETS);
    List<PanelPlan> plans = new ArrayList<>();
    for (PanelSetOut panel : context.setOut().panels()) {
      plans.add(planner.plan(panel, context.paper()));
      progress.step(1);
    }
    return plans;
  }

  private static void draw(PrintDocument document, PrintTexts print, WallSheets first, List<PanelPlan> plans,
      Progress progress) throws IOException {
    int number = 1;
    for (; number <= first.count(); number++) {
      first.draw(document.sheet(first.size(), Integer.toString(number)), number - 1);
      if (number == 1) {
        document.chapter(texts().text("title.wall"));
      }
    }
    progress.step(1);
    for (PanelPlan plan : plans) {
      PanelSheetDrawing drawing = new PanelSheetDrawing(print, plan, number, first.countOfAll());
      for (int i = 0; i < plan.sheets().size(); i++) {
        drawing.draw(document.sheet(plan.sheets().get(i).layout().size(), Integer.toString(number + i)), i);
        if (i == 0) {
          document.chapter(PrintTexts.name(plan.facts().panel().spec()));
        }
        if (plan.sheets().size() > 1) {
          document.section(texts().text("bookmark.part", "number", i + 1, "count", plan.sheets().size()));
        }
        progress.step(0);
      }
      progress.step(1);
      number += plan.sheets().size();
    }
  }
}
