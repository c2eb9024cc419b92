// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ResourceBundle;
import java.util.concurrent.Callable;
import muralbench.base.Messages;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command as plain Java: arguments in, results and complaints on two streams, exit code out. */
final class Main {
  static final String NAME = "muralbench";

  private static final Messages TEXTS = Messages.of(Main.class);

  private final Desk desk;
  private final Complaints complaints;
  private final CommandLine command;

  /**
   * A command.
   *
   * @param desk registries and streams
   * @param version what {@code --version} shows
   */
  Main(Desk desk, String version) {
    this.desk = desk;
    this.complaints = new Complaints(desk.err());
    this.command = new CommandLine(new Root()).setCommandName(NAME)
        .addSubcommand(new DemoVerb(desk))
        .addSubcommand(new NewVerb(desk))
        .addSubcommand(new PiecesVerb(desk))
        .addSubcommand(new SheetsVerb(desk))
        .addSubcommand(new CutsVerb(desk))
        .addSubcommand(new CheckVerb(desk))
        .addSubcommand(new ExportVerb(desk));
    IVersionProvider shown = () -> new String[] {TEXTS.text("version.shown", "version", version)};
    command.getCommandSpec().versionProvider(shown);
    command.getSubcommands().values().forEach(verb -> verb.getCommandSpec().versionProvider(shown));
    command.registerConverter(Path.class, new FileName());
    command.setResourceBundle(ResourceBundle.getBundle(Main.class.getPackageName() + ".messages"))
        .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
        .setParameterExceptionHandler((problem, arguments) -> complaints.usage(problem))
        .setExecutionExceptionHandler((problem, verb, result) -> complaints.about(problem))
        .setOut(new PrintWriter(desk.out(), true))
        .setErr(new PrintWriter(desk.err(), true));
  }

  /**
   * Runs one command.
   *
   * @return an {@link ExitCode}; never throws
   */
  int run(String... arguments) {
    try {
      int code = command.execute(arguments);
      // A print stream keeps its failures to itself; half a list of pieces must not look like all of them.
      // A reader that has seen enough, as in "pieces FILE | head", is no failure.
      return desk.out().checkError() && !desk.out().readerLeft() ? complaints.outputFailed() : code;
    } catch (Throwable fault) { // also out of memory and endless recursion: say so and give our own exit code
      return complaints.about(fault);
    } finally {
      desk.err().flush();
    }
  }

  /** The command without a verb: there is nothing to do. */
  @Command(mixinStandardHelpOptions = true, synopsisSubcommandLabel = "VERB")
  private static final class Root implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
      throw new ParameterException(spec.commandLine(), TEXTS.text("error.verb.missing"));
    }
  }
}
