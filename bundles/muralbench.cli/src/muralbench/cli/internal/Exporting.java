// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import muralbench.base.Finding;
import muralbench.base.InputException;
import muralbench.base.file.OutputFolder;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.model.Mural;
import muralbench.setout.MuralSetOut;
import muralbench.setout.SetOutChecks;

/** Writes documents of a mural into a folder: all of them, or nothing. */
final class Exporting {
  private final Desk desk;
  private final Predicate<Exporter> chosen;

  /**
   * An export.
   *
   * @param desk registries and streams
   * @param chosen the exporters to run
   */
  Exporting(Desk desk, Predicate<Exporter> chosen) {
    this.desk = desk;
    this.chosen = chosen;
  }

  /** What was written. */
  record Written(List<Path> files, List<Finding> findings) {}

  /** Reads a mural and writes its documents; complains of broken rules. Returns the exit code. */
  int run(Path file, PaperOption paper, Path folder) throws InputException, IOException {
    MuralInput input = new MuralInput(file);
    return reported(write(input, input.read(), paper, folder));
  }

  /** Writes the documents of a mural that was read already. */
  Written write(MuralInput input, Mural mural, PaperOption paper, Path folder) throws InputException, IOException {
    try (Interruption interruption = new Interruption()) {
      MuralSetOut setOut = input.setOut(mural, desk.bonds(), interruption);
      List<Finding> findings = SetOutChecks.findings(setOut);
      ExportContext context = new ExportContext(setOut, findings, paper.orUsualFor(setOut.spec().units()), desk.date());
      try (OutputFolder output = OutputFolder.open(folder)) {
        for (Exporter exporter : desk.exporters().all().stream().filter(chosen).toList()) {
          exporter.export(context, output, interruption);
        }
        return new Written(output.commit(), findings);
      }
    }
  }

  /** Prints the broken rules and gives the exit code. */
  int reported(Written written) {
    FindingsReport report = new FindingsReport(written.findings());
    report.errors().table(desk.err());
    return report.exitCode();
  }
}
