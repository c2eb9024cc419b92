// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code export FILE --out DIR}: everything there is an exporter for. */
@Command(name = "export", mixinStandardHelpOptions = true)
final class ExportVerb implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", descriptionKey = "parameter.file")
  private Path file;

  @Mixin
  private OutputOption out;

  @Mixin
  private PaperOption paper;

  private final Desk desk;

  ExportVerb(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws Exception {
    return new Exporting(desk, exporter -> true).run(file, paper, out.folder());
  }
}
