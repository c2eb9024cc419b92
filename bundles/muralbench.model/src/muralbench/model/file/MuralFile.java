// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file;

import java.io.IOException;
import java.nio.file.Path;
import muralbench.base.InputException;
import muralbench.model.Mural;

/** Reads and writes {@code .mural} files. */
public final class MuralFile {
  private MuralFile() {}

  /**
   * Reads a mural, migrating an older schema version. The mural is the only content of an EMF resource of its own.
   *
   * @throws InputException if the file is missing, is a folder, is damaged, unsafe or newer than this program
   * @throws IOException if the disk fails
   */
  public static Mural read(Path file) throws InputException, IOException {
    throw new UnsupportedOperationException();
  }

  /**
   * Writes a mural whole or not at all and keeps one backup of the file that was there.
   *
   * @throws IOException if it cannot be written; the old file is then untouched
   */
  public static void write(Mural mural, Path file) throws IOException {
    throw new UnsupportedOperationException();
  }
}
