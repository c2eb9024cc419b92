// SPDX-License-Identifier: EPL-2.0
package muralbench.base.file;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.Deque;

/** Puts finished files into their places and, closed before {@link #keep}, takes every step back. */
final class Placement implements AutoCloseable {
  /** A step that takes back what was done. */
  private interface Undo {
    void run() throws IOException;
  }

  private final Path old;
  private final Deque<Undo> undos = new ArrayDeque<>();

  /** A placement that keeps what it replaces in the folder {@code old} until it is done. */
  Placement(Path old) {
    this.old = old;
  }

  /** Makes a folder and those above it as far as they are not there. */
  void makeFolder(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      makeFolder(folder.getParent());
      Files.createDirectory(folder);
      undos.push(() -> Files.deleteIfExists(folder));
    }
  }

  void place(StagedFile file) throws IOException {
    makeFolder(file.target().getParent());
    Path target = AtomicFile.resolve(file.target());
    if (Files.exists(target)) {
      Path kept = old.resolve(Integer.toString(undos.size()));
      Files.copy(target, kept, StandardCopyOption.COPY_ATTRIBUTES);
      undos.push(() -> move(kept, target));
    } else {
      undos.push(() -> Files.deleteIfExists(target));
    }
    move(file.staged(), target);
    AtomicFile.forceFolder(target.getParent());
  }

  /** Everything is in its place and stays. */
  void keep() {
    undos.clear();
  }

  @Override
  public void close() throws IOException {
    while (!undos.isEmpty()) {
      undos.pop().run();
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      // A folder inside the target may be a link to another disk.
      AtomicFile.write(to, out -> Files.copy(from, out));
    }
  }
}
