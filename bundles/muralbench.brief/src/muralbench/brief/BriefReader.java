// SPDX-License-Identifier: EPL-2.0
package muralbench.brief;

import java.io.IOException;
import java.nio.file.Path;
import muralbench.base.InputException;
import muralbench.model.Mural;

/** Reads a brief, the JSON description of a wall and its panels, into a new mural. */
public final class BriefReader {
  private BriefReader() {}

  /**
   * Reads a brief file.
   *
   * @throws InputException naming the field by JSON pointer if the brief cannot be used
   * @throws IOException if the disk fails
   */
  public static Mural read(Path file) throws InputException, IOException {
    throw new UnsupportedOperationException();
  }

  /** Reads a brief from its text. */
  public static Mural readText(String json) throws InputException {
    throw new UnsupportedOperationException();
  }

  /** The brief of the demonstration mural. */
  public static Mural demo() {
    throw new UnsupportedOperationException();
  }
}
