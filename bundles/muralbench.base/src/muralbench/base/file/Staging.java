// SPDX-License-Identifier: EPL-2.0
package muralbench.base.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A hidden folder for files on their way. While it is used, this process holds the lock of a file in it; so what a
 * process left behind that was killed can be told from what another one is working with, and is removed.
 */
final class Staging implements AutoCloseable {
  private static final String PREFIX = ".muralbench-";
  private static final String SUFFIX = ".tmp";
  private static final String LOCK = "lock";

  /** A folder without a lock file is being made just now, or nobody's if it is older than this. */
  private static final Duration UNLOCKED_LIFE = Duration.ofHours(1);

  /** The folders of this process: a second look at the lock file would let go of the lock (POSIX, fcntl). */
  private static final Set<Path> OWN = ConcurrentHashMap.newKeySet();

  private final Path folder;
  private final FileChannel lock;

  private Staging(Path folder, FileChannel lock) {
    this.folder = folder;
    this.lock = lock;
  }

  /** Makes a staging folder in {@code parent}, and removes those left there by processes that were killed. */
  static Staging in(Path parent) throws IOException {
    removeAbandoned(parent);
    while (true) {
      Path folder = parent.toRealPath().resolve(PREFIX + UUID.randomUUID() + SUFFIX);
      OWN.add(folder);
      Files.createDirectory(folder);
      FileChannel channel = FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      // Another process may take it for abandoned in the moment before it is locked; then there is always a next one.
      if (locks(channel) && Files.exists(folder.resolve(LOCK))) {
        return new Staging(folder, channel);
      }
      channel.close();
      OWN.remove(folder);
    }
  }

  Path folder() {
    return folder;
  }

  @Override
  public void close() throws IOException {
    lock.close();
    removeTree(folder);
    OWN.remove(folder);
  }

  /** Whether the lock was free; a file system without locks is as good as one where it is. */
  private static boolean locks(FileChannel channel) {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (IOException noLocks) {
      return true;
    }
  }

  private static void removeAbandoned(Path parent) {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(parent.toRealPath(), PREFIX + "*" + SUFFIX)) {
      for (Path folder : left) {
        if (!OWN.contains(folder) && Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
          removeIfAbandoned(folder);
        }
      }
    } catch (IOException | DirectoryIteratorException unlisted) {
      return; // a folder may be open for writing and closed for looking
    }
  }

  private static void removeIfAbandoned(Path folder) {
    try (FileChannel channel = FileChannel.open(folder.resolve(LOCK), StandardOpenOption.WRITE)) {
      if (channel.tryLock() != null) {
        removeTree(folder);
      }
    } catch (NoSuchFileException noLock) {
      removeIfOld(folder);
    } catch (IOException | OverlappingFileLockException notOurs) {
      return; // what cannot be removed is in nobody's way
    }
  }

  private static void removeIfOld(Path folder) {
    try {
      if (Files.getLastModifiedTime(folder).toInstant().isBefore(Instant.now().minus(UNLOCKED_LIFE))) {
        removeTree(folder);
      }
    } catch (IOException notOurs) {
      return; // as above
    }
  }

  private static void removeTree(Path folder) throws IOException {
    List<Path> all = new ArrayList<>();
    if (Files.exists(folder)) {
      try (var walk = Files.walk(folder)) {
        walk.forEach(all::add);
      }
    }
    for (int i = all.size() - 1; i >= 0; i--) {
      Files.deleteIfExists(all.get(i));
    }
  }
}
