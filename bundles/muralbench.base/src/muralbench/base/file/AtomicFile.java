// SPDX-License-Identifier: EPL-2.0
package muralbench.base.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;

/** Writes a file whole or not at all: temporary sibling, force to disk, atomic rename. */
public final class AtomicFile {
  /** Writes the content of a file. */
  @FunctionalInterface
  public interface Content {
    /** Writes the content; the stream is buffered and is closed by the caller. */
    void writeTo(OutputStream out) throws IOException;
  }

  private AtomicFile() {}

  /**
   * Writes {@code content} to {@code target}. Whatever goes wrong, {@code target} is either as it was or complete, and no
   * temporary file stays.
   *
   * @throws IOException if it cannot be written
   */
  public static void write(Path target, Content content) throws IOException {
    throw new UnsupportedOperationException();
  }

  /** As {@link #write}, keeping the previous content, if there was any, as {@code NAME.bak}. */
  public static void writeKeepingBackup(Path target, Content content) throws IOException {
    throw new UnsupportedOperationException();
  }
}
