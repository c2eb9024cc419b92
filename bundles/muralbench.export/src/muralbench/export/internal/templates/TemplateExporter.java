// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import muralbench.base.Messages;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.export.ExporterIds;
import muralbench.setout.PieceKind;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.cut.CutList;

/**
 * Writes {@code templates.pdf}: every curved cut, wedges of rings above all, in full size, to be cut out of the paper
 * and laid on the tile. The numbers are those of the cutting list.
 */
public final class TemplateExporter implements Exporter {
  private static final Messages TEXT = Messages.of(TemplateExporter.class);

  @Override
  public String id() {
    return ExporterIds.TEMPLATES;
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
  public void export(ExportContext context, OutputFolder output, Progress progress) throws IOException {
    progress.begin(TEXT.text("progress"), 2);
    List<CutGroup> curved = CutList.of(context.setOut()).stream().filter(TemplateExporter::curved).toList();
    progress.step(1);
    try (OutputStream out = output.create("templates.pdf")) {
      TemplateSheets.write(context, curved, out);
    }
    progress.step(1);
  }

  /** Straight cuts are marked out with a square; a round hole is drilled. */
  private static boolean curved(CutGroup group) {
    return group.kind() == PieceKind.CURVED || !group.outline().straight();
  }
}
