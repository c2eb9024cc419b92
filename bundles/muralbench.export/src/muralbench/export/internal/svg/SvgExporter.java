// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.svg;

import java.io.IOException;
import java.io.OutputStream;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.export.ExporterIds;
import muralbench.export.internal.FileNames;
import muralbench.setout.PanelSetOut;

/** Writes {@code panel-ID.svg} for every panel; see {@link PanelDrawing}. */
public final class SvgExporter implements Exporter {
  private static final Messages TEXT = Messages.of(SvgExporter.class);

  @Override
  public String id() {
    return ExporterIds.SVG;
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
    progress.begin(TEXT.text("progress"), context.setOut().panels().size());
    FileNames names = new FileNames();
    for (PanelSetOut panel : context.setOut().panels()) {
      try (OutputStream out = output.create(names.name("panel-", panel.spec().id(), ".svg"))) {
        PanelDrawing.write(context.setOut().spec(), panel, out);
      }
      progress.step(1);
    }
  }
}
