// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import muralbench.base.InputException;

/** The folder a brief lies in, from which it may use drawings; nothing outside it is read. */
public final class BriefFolder {
  /** For a brief that is no file. */
  public static final BriefFolder NONE = new BriefFolder(null);

  /** Largest drawing, bytes. */
  private static final int LARGEST = 16 << 20;

  private final Path folder;

  private BriefFolder(Path folder) {
    this.folder = folder;
  }

  /** The folder of a brief. */
  public static BriefFolder of(Path brief) {
    return new BriefFolder(brief.toAbsolutePath().getParent());
  }

  /**
   * The content of a drawing, at most 16 MB.
   *
   * @param field names the drawing, relative to the folder and with {@code /} between names
   */
  byte[] read(Field field) throws InputException {
    String pointer = field.pointer();
    if (folder == null) {
      throw BriefProblem.at(pointer, "drawing.noFolder");
    }
    Path file = inside(field.text(""), pointer);
    if (!Files.exists(file)) {
      throw BriefProblem.at(pointer, "drawing.missing", "name", field.text(""));
    }
    try {
      if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
        throw BriefProblem.at(pointer, "drawing.unreadable", "name", field.text(""));
      }
      // A link may not lead out of the folder either.
      if (!file.toRealPath().startsWith(folder.toRealPath())) {
        throw BriefProblem.at(pointer, "drawing.outside", "name", field.text(""));
      }
      return start(file, pointer);
    } catch (IOException e) {
      throw BriefProblem.at(pointer, "drawing.unreadable", "name", field.text(""));
    }
  }

  private Path inside(String name, String pointer) throws InputException {
    try {
      Path relative = Path.of(name);
      // A backslash or a drive would mean another file on another system.
      boolean plain = name.indexOf('\\') < 0 && name.indexOf(':') < 0 && !name.startsWith("/");
      for (Path part : relative) {
        plain &= !part.toString().equals("..");
      }
      if (plain && !relative.isAbsolute()) {
        return folder.resolve(relative);
      }
    } catch (InvalidPathException e) {
      // Refused below like every other name that cannot be used.
    }
    throw BriefProblem.at(pointer, "drawing.outside", "name", name);
  }

  private static byte[] start(Path file, String pointer) throws InputException, IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw BriefProblem.at(pointer, "drawing.huge", "name", file.getFileName(), "limit", LARGEST >> 20);
      }
      return bytes;
    }
  }
}
