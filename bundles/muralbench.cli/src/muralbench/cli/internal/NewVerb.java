// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.Progress;
import muralbench.model.Mural;
import muralbench.model.file.MuralFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code new BRIEF --out FILE}: a mural from a brief. A file that was there is kept beside it as {@code FILE.bak}. */
@Command(name = "new", mixinStandardHelpOptions = true)
final class NewVerb implements Callable<Integer> {
  private static final Messages TEXTS = Messages.of(NewVerb.class);

  @Parameters(paramLabel = "BRIEF", descriptionKey = "parameter.brief")
  private Path brief;

  @Option(names = "--out", paramLabel = "FILE", required = true, converter = FileName.Written.class,
      descriptionKey = "option.mural")
  private Path file;

  private final Desk desk;

  NewVerb(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws Exception {
    MuralInput input = new MuralInput(brief);
    Mural mural = input.read();
    refuseOverwritingTheBrief();
    input.setOut(mural, desk.bonds(), Progress.NONE); // what cannot be set out is no mural worth keeping
    MuralFile.write(mural, file);
    return ExitCode.DONE;
  }

  private void refuseOverwritingTheBrief() throws InputException, IOException {
    if (Files.exists(file) && Files.isSameFile(brief, file)) { // also where one is a link to the other
      throw new InputException(file.toString(), TEXTS.text("error.new.same"), TEXTS.text("error.new.same.remedy"));
    }
  }
}
