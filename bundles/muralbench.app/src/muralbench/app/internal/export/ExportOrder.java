// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.export;

import java.nio.file.Path;
import java.util.List;
import muralbench.export.Exporter;
import muralbench.export.Paper;

/**
 * What is to be written.
 *
 * @param exporters the documents, in the order of the list
 * @param paper the paper for printed documents
 * @param folder where the files go
 */
public record ExportOrder(List<Exporter> exporters, Paper paper, Path folder) {
  public ExportOrder {
    exporters = List.copyOf(exporters);
  }
}
