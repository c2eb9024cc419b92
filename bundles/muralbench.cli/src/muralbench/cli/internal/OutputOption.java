// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The option {@code --out DIR} of verbs that write several files. */
final class OutputOption {
  @Option(names = "--out", paramLabel = "DIR", required = true, descriptionKey = "option.out")
  private Path folder;

  Path folder() {
    return folder;
  }
}
