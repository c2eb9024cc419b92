// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.PlainLine;
import muralbench.base.Progress;
import muralbench.brief.BriefReader;
import muralbench.model.Mural;
import muralbench.model.file.MuralFile;
import muralbench.pattern.work.PatternReader;
import muralbench.setout.MuralSetOut;
import muralbench.setout.SetOut;
import muralbench.setout.bond.BondRegistry;

/**
 * The FILE argument: a mural or a brief, told apart by what is in it. The name decides only where the content is
 * neither, so that a damaged mural is called a damaged mural.
 */
final class MuralInput {
  private static final Messages TEXTS = Messages.of(MuralInput.class);

  private final Path file;

  MuralInput(Path file) {
    this.file = file;
  }

  /** Reads the mural. */
  Mural read() throws InputException, IOException {
    refuseWhatIsNoFile();
    try {
      return holdsMural() ? MuralFile.read(file) : BriefReader.read(file);
    } catch (InputException problem) {
      throw inThisFile(problem);
    }
  }

  /** Reads the mural and sets it out. */
  MuralSetOut setOut(BondRegistry bonds, Progress progress) throws InputException, IOException {
    return setOut(read(), bonds, progress);
  }

  /** Sets out a mural that was read from this file. */
  MuralSetOut setOut(Mural mural, BondRegistry bonds, Progress progress) throws InputException {
    try {
      return SetOut.mural(PatternReader.mural(mural), bonds, progress);
    } catch (InputException problem) {
      throw inThisFile(problem);
    }
  }

  private void refuseWhatIsNoFile() throws InputException, IOException {
    if (Files.isDirectory(file)) {
      throw new InputException(file.toString(), TEXTS.text("error.input.folder"), TEXTS.text("error.input.remedy"));
    }
    if (!Files.exists(file)) {
      throw missing();
    }
    if (!Files.isRegularFile(file)) { // reading a pipe may wait for ever, and a device may have no end
      throw new InputException(file.toString(), TEXTS.text("error.input.special"),
          TEXTS.text("error.input.special.remedy"));
    }
  }

  private InputException missing() throws IOException {
    try {
      file.toRealPath();
    } catch (AccessDeniedException denied) {
      return new InputException(file.toString(), TEXTS.text("error.disk.denied"),
          TEXTS.text("error.input.denied.remedy"), denied);
    } catch (NoSuchFileException gone) {
      boolean link = Files.isSymbolicLink(file);
      return new InputException(file.toString(), TEXTS.text(link ? "error.input.lost" : "error.disk.missing"),
          TEXTS.text("error.input.remedy"));
    } catch (FileSystemException round) { // ELOOP has no exception of its own
      return new InputException(file.toString(), TEXTS.text("error.input.loop"), TEXTS.text("error.input.remedy"));
    }
    return new InputException(file.toString(), TEXTS.text("error.disk.missing"), TEXTS.text("error.input.remedy"));
  }

  private boolean holdsMural() throws IOException, InputException {
    byte[] head;
    try (InputStream in = Files.newInputStream(file)) {
      head = in.readNBytes(64);
    } catch (AccessDeniedException denied) {
      throw new InputException(file.toString(), TEXTS.text("error.disk.denied"),
          TEXTS.text("error.input.denied.remedy"), denied);
    }
    if (head.length == 0) {
      throw new InputException(file.toString(), TEXTS.text("error.input.empty"), TEXTS.text("error.input.remedy"));
    }
    if (head.length >= 2 && head[0] == 'P' && head[1] == 'K') {
      return true; // every zip starts with the initials of its inventor
    }
    if (firstMark(head) == '{') {
      return false;
    }
    boolean named = file.toString().toLowerCase(Locale.ROOT).endsWith(".mural");
    if (!named && !isText(head)) {
      throw new InputException(file.toString(), TEXTS.text("error.input.other"), TEXTS.text("error.input.remedy"));
    }
    return named;
  }

  /** Whether this may be the start of a text: no control characters, and not a PDF, which starts like a text. */
  private static boolean isText(byte[] head) {
    for (byte mark : head) {
      if (mark >= 0 && mark < ' ' && !Character.isWhitespace(mark)) {
        return false;
      }
    }
    return !new String(head, StandardCharsets.ISO_8859_1).startsWith("%PDF-");
  }

  /** The first byte that is neither white space nor part of a byte order mark. */
  private static int firstMark(byte[] head) {
    for (byte mark : head) {
      if (mark > ' ') {
        return mark;
      }
    }
    return 0;
  }

  private InputException inThisFile(InputException problem) {
    if (problem.place().contains(PlainLine.of(String.valueOf(file.getFileName())))) {
      return problem;
    }
    String place = problem.place().isEmpty() ? file.toString() : file + ": " + problem.place();
    return new InputException(place, problem.problem(), problem.remedy(), problem);
  }
}
