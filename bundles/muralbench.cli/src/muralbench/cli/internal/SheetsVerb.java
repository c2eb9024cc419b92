// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import muralbench.export.ExporterIds;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code sheets FILE --out DIR}: key sheets for the installer. */
@Command(name = "sheets", mixinStandardHelpOptions = true)
final class SheetsVerb implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", descriptionKey = "parameter.file")
  private Path file;

  @Mixin
  private OutputOption out;

  @Mixin
  private PaperOption paper;

  private final Desk desk;

  SheetsVerb(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws Exception {
    Exporting exporting = new Exporting(desk, exporter -> exporter.id().equals(ExporterIds.KEY_SHEETS));
    return exporting.run(file, paper, out.folder());
  }
}
