// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.PlainLine;
import muralbench.brief.BriefReader;
import muralbench.model.Mural;
import muralbench.model.file.MuralFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code demo}: an invented mural with all its documents, to look at and to play with. */
@Command(name = "demo", mixinStandardHelpOptions = true)
final class DemoVerb implements Callable<Integer> {
  private static final Messages TEXTS = Messages.of(DemoVerb.class);
  private static final String USUAL_FOLDER = "muralbench-demo";
  private static final String MURAL = "demo.mural";

  @Option(names = "--out", paramLabel = "DIR", descriptionKey = "option.out.demo")
  private Path folder;

  @Mixin
  private PaperOption paper;

  private final Desk desk;

  DemoVerb(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() throws Exception {
    Path target = folder == null ? usualFolder() : folder;
    Mural mural = BriefReader.demo();
    Exporting exporting = new Exporting(desk, exporter -> true);
    Exporting.Written written = exporting.write(new MuralInput(target.resolve(MURAL)), mural, paper, target);
    MuralFile.write(mural, target.resolve(MURAL));
    print(target.resolve(MURAL));
    Path root = target.toAbsolutePath().normalize();
    written.files().forEach(file -> print(target.resolve(root.relativize(file))));
    return exporting.reported(written);
  }

  private void print(Path file) {
    desk.out().println(PlainLine.of(file.toString()));
  }

  /** The folder used when none is named; never one that holds something else. */
  private static Path usualFolder() throws InputException, IOException {
    Path usual = Path.of(USUAL_FOLDER);
    if (Files.isDirectory(usual) && !Files.exists(usual.resolve(MURAL))) {
      try (Stream<Path> content = Files.list(usual)) {
        if (content.findAny().isPresent()) {
          throw new InputException(USUAL_FOLDER, TEXTS.text("error.demo.folder"), TEXTS.text("error.demo.remedy"));
        }
      }
    }
    return usual;
  }
}
