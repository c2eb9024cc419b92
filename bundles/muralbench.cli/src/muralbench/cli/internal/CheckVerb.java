// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import muralbench.base.Progress;
import muralbench.setout.SetOutChecks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code check FILE}: what breaks the rules of layout and joints. */
@Command(name = "check", mixinStandardHelpOptions = true)
final class CheckVerb implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", descriptionKey = "parameter.file")
  private Path file;

  @Option(names = "--json", descriptionKey = "option.json")
  private boolean json;

  private final Desk desk;

  CheckVerb(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws Exception {
    FindingsReport report =
        new FindingsReport(SetOutChecks.findings(new MuralInput(file).setOut(desk.bonds(), Progress.NONE)));
    if (json) {
      report.json(desk.out());
    } else {
      report.table(desk.out());
    }
    return report.exitCode();
  }
}
