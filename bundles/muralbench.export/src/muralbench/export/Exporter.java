// SPDX-License-Identifier: EPL-2.0
package muralbench.export;

import java.io.IOException;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;

/**
 * Writes one kind of document from a mural that has been set out. Exporters show numbers and compute none; they are
 * stateless and may be called from any thread. Other plug-ins add their own through the extension point
 * {@code muralbench.extensions.exporters}.
 */
public interface Exporter {
  /** Identifier, lower case with hyphens, such as {@code key-sheets}. */
  String id();

  /** Name for people. */
  String label();

  /** One sentence for people: what the document is for. */
  String purpose();

  /**
   * Writes the document's files. The same context gives the same bytes.
   *
   * @param context the mural and the choices made
   * @param output takes the files; the caller commits it
   * @param progress is begun by the exporter; it throws when the person cancels, and the exporter lets that pass
   * @throws InputException if the mural cannot be shown this way, with the remedy
   * @throws IOException if the disk fails
   */
  void export(ExportContext context, OutputFolder output, Progress progress) throws InputException, IOException;
}
