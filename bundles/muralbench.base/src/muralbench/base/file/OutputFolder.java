// SPDX-License-Identifier: EPL-2.0
package muralbench.base.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;

/**
 * A folder that receives several files together: they are written beside it first and moved in by {@link #commit}. Closed
 * without a commit, nothing is left. Files already in the folder under other names stay as they are.
 */
public final class OutputFolder implements AutoCloseable {
  private final Path target;

  private OutputFolder(Path target) {
    this.target = target;
  }

  /**
   * Opens a folder for output; it is made on commit if it is not there.
   *
   * @throws IOException if {@code target} is a file or cannot be written to
   */
  public static OutputFolder open(Path target) throws IOException {
    return new OutputFolder(target);
  }

  /** The folder the files go to. */
  public Path target() {
    return target;
  }

  /**
   * A stream for a new file.
   *
   * @param name file name, or a relative path with {@code /}; stays inside the folder
   * @throws IllegalArgumentException if the name leads outside the folder or was used before
   */
  public OutputStream create(String name) throws IOException {
    throw new UnsupportedOperationException();
  }

  /** Moves all files into place and returns them in order of creation. */
  public List<Path> commit() throws IOException {
    throw new UnsupportedOperationException();
  }

  /** Removes what was not committed. */
  @Override
  public void close() throws IOException {}
}
