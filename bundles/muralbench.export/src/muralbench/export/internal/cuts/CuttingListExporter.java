// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.export.ExporterIds;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.cut.CutList;

/**
 * Writes the cutting list as {@code cutting-list.pdf}, {@code cutting-list.csv} and {@code cutting-list.xlsx}, every
 * piece as {@code pieces.csv}, pieces that share a tile, if there are any, as {@code made-up.csv} and what to order as
 * {@code order.csv}. All share the numbers of the cuts.
 */
public final class CuttingListExporter implements Exporter {
  private static final Messages TEXT = Messages.of(CuttingListExporter.class);

  @Override
  public String id() {
    return ExporterIds.CUTTING_LIST;
  }

  @Override
  public String label() {
    return TEXT.text("label");
  }

  @Override
  public String purpose() {
    return TEXT.text("purpose");
  }

  @Override
  public void export(ExportContext context, OutputFolder output, Progress progress)
      throws InputException, IOException {
    progress.begin(TEXT.text("progress"), 6);
    List<CutGroup> groups = CutList.of(context.setOut());
    CutTables tables = new CutTables(context.setOut(), groups);
    try (OutputStream out = output.create("cutting-list.pdf")) {
      CutSheets.write(context, groups, tables.shared(), out);
    }
    progress.step(1);
    try (OutputStream out = output.create("cutting-list.csv")) {
      SafeCsv.write(tables.cuts(), out);
    }
    progress.step(1);
    try (OutputStream out = output.create("pieces.csv")) {
      SafeCsv.write(tables.pieces(), out);
    }
    progress.step(1);
    if (!tables.madeUp().rows().isEmpty()) {
      try (OutputStream out = output.create("made-up.csv")) {
        SafeCsv.write(tables.madeUp(), out);
      }
    }
    progress.step(1);
    try (OutputStream out = output.create("order.csv")) {
      SafeCsv.write(tables.order(), out);
    }
    progress.step(1);
    try (OutputStream out = output.create("cutting-list.xlsx")) {
      new CutWorkbook(context, tables).write(out);
    }
    progress.step(1);
  }
}
