// SPDX-License-Identifier: EPL-2.0
package muralbench.base.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import muralbench.base.Messages;

/**
 * A folder that receives several files together: they are written beside it first and moved in by {@link #commit}.
 * Closed without a commit, nothing is left. Files already in the folder under other names stay as they are; files of
 * the same name are replaced one by one, each atomically, and are brought back should a later one fail.
 */
public final class OutputFolder implements AutoCloseable {
  private static final Messages MESSAGES = Messages.of(OutputFolder.class);

  /** What no file name on any of the three systems may hold; the slash parts folders. */
  private static final Pattern UNFIT = Pattern.compile("[\\\\:*?\"<>|\\p{Cntrl}]");

  private final Path target;
  private final Staging staging;
  private final Map<String, StagedFile> files = new LinkedHashMap<>();
  private boolean committed;

  private OutputFolder(Path target, Staging staging) {
    this.target = target;
    this.staging = staging;
  }

  /**
   * Opens a folder for output; it is made on commit if it is not there.
   *
   * @throws IOException if {@code target} is a file or cannot be written to
   */
  public static OutputFolder open(Path target) throws IOException {
    Path folder = target.toAbsolutePath().normalize();
    Path there = folder;
    while (!Files.exists(there)) {
      refuseLink(there);
      there = there.getParent();
    }
    if (!Files.isDirectory(there)) {
      throw new NotDirectoryException(MESSAGES.text("folder.isFile", "folder", there));
    }
    if (!Files.isWritable(there)) {
      throw new AccessDeniedException(MESSAGES.text("folder.readOnly", "folder", there));
    }
    // Inside what is there already: the one place sure to be on the same disk, so that moving in is a rename.
    return new OutputFolder(folder, Staging.in(there));
  }

  /** A link to nothing, or one that leads round in a circle, cannot be made a folder. */
  private static void refuseLink(Path folder) throws IOException {
    if (Files.isSymbolicLink(folder)) {
      AtomicFile.resolve(folder);
      throw new NoSuchFileException(MESSAGES.text("folder.lost", "folder", folder));
    }
  }

  /** The folder the files go to. */
  public Path target() {
    return target;
  }

  /**
   * A stream for a new file. It is buffered; one left open is closed by {@link #commit}.
   *
   * @param name file name, or a relative path with {@code /}; stays inside the folder
   * @throws IllegalArgumentException if the name leads outside the folder, was used before (letters of either case are
   *     the same) or holds a character that some system forbids
   */
  public OutputStream create(String name) throws IOException {
    refuseAfterCommit();
    refuseUnfit(name);
    String key = name.toLowerCase(Locale.ROOT);
    if (files.containsKey(key)) {
      throw new IllegalArgumentException("used before: " + name);
    }
    Path staged = staging.folder().resolve("new").resolve(name);
    Files.createDirectories(staged.getParent());
    StagedFile file = StagedFile.create(staged, target.resolve(name));
    files.put(key, file);
    return file;
  }

  /**
   * Moves all files into place and returns them in order of creation. If one cannot be moved, those moved before are
   * taken back.
   *
   * @throws IOException if the files cannot be completed or moved; the folder is then as it was
   */
  public List<Path> commit() throws IOException {
    refuseAfterCommit();
    for (StagedFile file : files.values()) {
      file.close();
    }
    for (StagedFile file : files.values()) {
      if (Files.isDirectory(file.target())) {
        throw new FileSystemException(MESSAGES.text("folder.nameTaken", "file", file.target()));
      }
      AtomicFile.refuseSpecial(file.target());
    }
    try (Placement placement = new Placement(Files.createDirectories(staging.folder().resolve("old")))) {
      placement.makeFolder(target);
      for (StagedFile file : files.values()) {
        placement.place(file);
      }
      placement.keep();
    }
    committed = true;
    return files.values().stream().map(StagedFile::target).toList();
  }

  /** Removes what was not committed. */
  @Override
  public void close() throws IOException {
    for (StagedFile file : files.values()) {
      file.abandon();
    }
    staging.close();
  }

  private void refuseAfterCommit() {
    if (committed) {
      throw new IllegalStateException("already committed");
    }
  }

  private static void refuseUnfit(String name) {
    boolean unfit = UNFIT.matcher(name).find();
    for (String part : name.split("/", -1)) {
      unfit |= part.isBlank() || part.equals(".") || part.equals("..");
    }
    if (unfit) {
      throw new IllegalArgumentException("not a name inside the folder: " + name);
    }
  }
}
