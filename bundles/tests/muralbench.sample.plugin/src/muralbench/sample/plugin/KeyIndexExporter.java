// SPDX-License-Identifier: EPL-2.0
package muralbench.sample.plugin;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.setout.PanelSetOut;
import muralbench.setout.Piece;

/** Writes {@code key-index.txt}: every key with its kind, one to a line. */
public final class KeyIndexExporter implements Exporter {
  @Override
  public String id() {
    return "key-index";
  }

  @Override
  public String label() {
    return "Key index";
  }

  @Override
  public String purpose() {
    return "All keys with their kinds in a plain text, to be ticked off while setting.";
  }

  @Override
  public void export(ExportContext context, OutputFolder output, Progress progress) throws IOException {
    progress.begin(label(), context.setOut().panels().size());
    try (Writer text = new OutputStreamWriter(output.create("key-index.txt"), StandardCharsets.UTF_8)) {
      for (PanelSetOut panel : context.setOut().panels()) {
        for (Piece piece : panel.pieces()) {
          text.write(piece.key() + ' ' + piece.kind().word() + '\n');
        }
        progress.step(1);
      }
    }
  }
}
