// SPDX-License-Identifier: EPL-2.0
package muralbench.extensions.tests.broken;

import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.export.ExporterIds;

/** Takes the id of an exporter that is there already. */
public class SecondPieces implements Exporter {
  @Override
  public String id() {
    return ExporterIds.PIECES;
  }

  @Override
  public String label() {
    return "Pieces again";
  }

  @Override
  public String purpose() {
    return "None.";
  }

  @Override
  public void export(ExportContext context, OutputFolder output, Progress progress) {
    throw new UnsupportedOperationException();
  }
}
