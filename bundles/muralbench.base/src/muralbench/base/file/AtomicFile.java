// SPDX-License-Identifier: EPL-2.0
package muralbench.base.file;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;
import muralbench.base.Messages;

/**
 * Writes a file whole or not at all: temporary sibling, force to disk, atomic rename.
 *
 * <p>A target that is a symbolic link stays one; the file it points at is replaced. Permissions of a file that is
 * replaced are kept; a read-only file is refused. The messages of the exceptions are fit to be shown.
 */
public final class AtomicFile {
  private static final Messages MESSAGES = Messages.of(AtomicFile.class);
  private static final int MOST_LINKS = 40;

  /** Writes the content of a file. */
  @FunctionalInterface
  public interface Content {
    /** Writes the content; the stream is buffered and is closed by the caller. */
    void writeTo(OutputStream out) throws IOException;
  }

  private AtomicFile() {}

  /**
   * Writes {@code content} to {@code target}. Whatever goes wrong, {@code target} is either as it was or complete, and
   * no temporary file stays.
   *
   * @throws IOException if it cannot be written
   */
  public static void write(Path target, Content content) throws IOException {
    write(target, content, false);
  }

  /**
   * As {@link #write}, keeping the previous content, if there was any, as {@code NAME.bak} beside the file. An older
   * backup is replaced only once the new content is safely on disk.
   */
  public static void writeKeepingBackup(Path target, Content content) throws IOException {
    write(target, content, true);
  }

  private static void write(Path target, Content content, boolean keepBackup) throws IOException {
    Path file = resolve(target.toAbsolutePath());
    refuseUnwritable(file);
    Path temporary = file.resolveSibling("." + file.getFileName() + "." + UUID.randomUUID() + ".tmp");
    try {
      fill(temporary, content);
      copyPermissions(file, temporary);
      if (keepBackup && Files.exists(file)) {
        write(file.resolveSibling(file.getFileName() + ".bak"), out -> Files.copy(file, out), false);
      }
      Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
      forceFolder(file.getParent());
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  /** Follows symbolic links to the file they name, whether it is there or not. */
  static Path resolve(Path file) throws IOException {
    Path at = file;
    for (int links = 0; Files.isSymbolicLink(at); links++) {
      if (links == MOST_LINKS) {
        throw new FileSystemException(MESSAGES.text("file.tooManyLinks", "file", file));
      }
      at = at.resolveSibling(Files.readSymbolicLink(at)).normalize();
    }
    return at;
  }

  private static void refuseUnwritable(Path file) throws IOException {
    if (Files.isDirectory(file) || file.getFileName() == null) {
      throw new FileSystemException(MESSAGES.text("file.isFolder", "file", file));
    }
    refuseSpecial(file);
    if (!Files.isDirectory(file.getParent())) {
      throw new NoSuchFileException(MESSAGES.text("file.noFolder", "folder", file.getParent()));
    }
    if (Files.exists(file) && !Files.isWritable(file)) {
      throw new AccessDeniedException(MESSAGES.text("file.readOnly", "file", file));
    }
    if (!Files.isWritable(file.getParent())) {
      throw new AccessDeniedException(MESSAGES.text("folder.readOnly", "folder", file.getParent()));
    }
  }

  /** Refuses a pipe, a device and the like, which a rename would do away with. */
  static void refuseSpecial(Path file) throws IOException {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new FileSystemException(MESSAGES.text("file.special", "file", file));
    }
  }

  private static void fill(Path temporary, Content content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(temporary, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
      OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16);
      content.writeTo(new Unclosed(out));
      out.flush();
      channel.force(true);
    }
  }

  private static void copyPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView target = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (target != null && Files.exists(from)) {
      target.setPermissions(Files.getPosixFilePermissions(from));
    }
  }

  /** Makes a rename last through a power cut, on systems where a folder can be opened (not on Windows). */
  static void forceFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // The rename itself has succeeded and is atomic; only its moment of reaching the disk is left to the system.
      return;
    }
  }

  /** Content writers may close what they are given, as a zip stream does; the file still has to be forced. */
  private static final class Unclosed extends FilterOutputStream {
    Unclosed(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
      out.write(bytes, offset, length);
    }

    @Override
    public void close() throws IOException {
      flush();
    }
  }
}
