// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import muralbench.base.Progress;
import muralbench.export.PiecesJson;
import muralbench.setout.MuralSetOut;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pieces FILE}: every piece as JSON on standard output. */
@Command(name = "pieces", mixinStandardHelpOptions = true)
final class PiecesVerb implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", descriptionKey = "parameter.file")
  private Path file;

  @Option(names = "--panel", paramLabel = "ID", descriptionKey = "option.panel")
  private String panel;

  private final Desk desk;

  PiecesVerb(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws Exception {
    MuralSetOut setOut = new MuralInput(file).setOut(desk.bonds(), Progress.NONE);
    PiecesJson.write(setOut, desk.out(), Optional.ofNullable(panel));
    return ExitCode.DONE;
  }
}
