// SPDX-License-Identifier: EPL-2.0
package muralbench.export;

import java.util.List;
import muralbench.export.internal.cuts.CuttingListExporter;
import muralbench.export.internal.keysheet.KeySheetExporter;
import muralbench.export.internal.pieces.PiecesExporter;
import muralbench.export.internal.svg.SvgExporter;
import muralbench.export.internal.templates.TemplateExporter;

/** The exporters that come with the program. */
final class StandardExporters {
  private StandardExporters() {}

  static List<Exporter> all() {
    return List.of(
        new KeySheetExporter(),
        new CuttingListExporter(),
        new TemplateExporter(),
        new SvgExporter(),
        new PiecesExporter());
  }
}
