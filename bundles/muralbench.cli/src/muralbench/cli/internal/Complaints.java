// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import muralbench.base.CancelledException;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.PlainLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what went wrong, in one or two plain lines, and gives the exit code for it. */
final class Complaints {
  private static final Messages TEXTS = Messages.of(Complaints.class);

  private final PrintStream err;

  Complaints(PrintStream err) {
    this.err = err;
  }

  /** A command that cannot be understood. */
  int usage(ParameterException problem) {
    boolean verb = problem.getCommandLine().getParent() != null;
    String command = problem.getCommandLine().getCommandSpec().qualifiedName();
    String said = problem.getMessage();
    if (!verb && problem instanceof UnmatchedArgumentException unmatched) {
      String word = unmatched.getUnmatched().get(0);
      if (!word.startsWith("-")) {
        said = TEXTS.text("error.verb.unknown", "verb", word);
      }
    }
    say(said, TEXTS.text("error.usage.remedy", "command", command));
    return ExitCode.BAD_INPUT;
  }

  /** Whatever a verb threw. */
  int about(Throwable problem) {
    if (problem instanceof InputException input) {
      say((input.place().isEmpty() ? "" : input.place() + ": ") + input.problem(), input.remedy());
      return ExitCode.BAD_INPUT;
    }
    if (problem instanceof IOException disk) {
      DiskTrouble trouble = DiskTrouble.of(disk);
      say(trouble.problem(), trouble.remedy());
      return ExitCode.BAD_INPUT;
    }
    if (problem instanceof InvalidPathException path) {
      say(TEXTS.text("error.path", "path", path.getInput()), TEXTS.text("error.path.remedy"));
      return ExitCode.BAD_INPUT;
    }
    if (problem instanceof CancelledException) {
      return ExitCode.BAD_INPUT; // the person who pressed the interrupt key needs no telling
    }
    say(TEXTS.text("error.fault", "fault", problem.toString().lines().findFirst().orElse("")), report(problem));
    return ExitCode.OUR_FAULT;
  }

  /** Standard output took not all that was printed. */
  int outputFailed() {
    say(TEXTS.text("error.output"), TEXTS.text("error.output.remedy"));
    return ExitCode.BAD_INPUT;
  }

  private void say(String problem, String remedy) {
    err.println(Main.NAME + ": " + PlainLine.of(problem.strip().replaceFirst("\\.$", "")) + ".");
    err.println("  " + PlainLine.of(remedy.strip()));
  }

  private static String report(Throwable fault) {
    try {
      Path log = Files.createTempFile("muralbench-fault-", ".log");
      try (PrintWriter writer = new PrintWriter(Files.newBufferedWriter(log, StandardCharsets.UTF_8))) {
        fault.printStackTrace(writer);
      }
      return TEXTS.text("error.fault.remedy", "log", log);
    } catch (IOException noLog) {
      return TEXTS.text("error.fault.remedy.unlogged", "reason", DiskTrouble.of(noLog).problem());
    }
  }
}
