// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pieces;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.export.ExporterIds;
import muralbench.export.PiecesJson;

/** Writes {@code pieces.json}; see {@link PiecesJson}. */
public final class PiecesExporter implements Exporter {
  private static final Messages TEXT = Messages.of(PiecesExporter.class);

  @Override
  public String id() {
    return ExporterIds.PIECES;
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
    progress.begin(TEXT.text("progress"), 1);
    try (OutputStream out = output.create("pieces.json")) {
      PiecesJson.write(context.setOut(), out, Optional.empty());
    }
    progress.step(1);
  }
}
