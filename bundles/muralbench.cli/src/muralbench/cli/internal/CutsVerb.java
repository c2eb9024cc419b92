// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import muralbench.export.ExporterIds;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code cuts FILE --out DIR}: cutting list. */
@Command(name = "cuts", mixinStandardHelpOptions = true)
final class CutsVerb implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", descriptionKey = "parameter.file")
  private Path file;

  @Mixin
  private OutputOption out;

  @Mixin
  private PaperOption paper;

  private final Desk desk;

  CutsVerb(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws Exception {
    Exporting exporting = new Exporting(desk, exporter -> exporter.id().equals(ExporterIds.CUTTING_LIST));
    return exporting.run(file, paper, out.folder());
  }
}
