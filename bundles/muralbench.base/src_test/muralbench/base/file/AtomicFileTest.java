// SPDX-License-Identifier: EPL-2.0
package muralbench.base.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
  @TempDir
  Path folder;
  Path file;

  @BeforeEach
  void name() {
    file = folder.resolve("wall.txt");
  }

  @Test
  void writesANewFileAndNothingElse() throws Exception {
    AtomicFile.write(file, text("tile"));
    assertEquals("tile", Files.readString(file));
    assertEquals(List.of("wall.txt"), names());
  }

  @Test
  void targetIsUntouchedUntilTheContentIsComplete() throws Exception {
    Files.writeString(file, "old");
    AtomicFile.write(file, out -> {
      out.write("new".getBytes());
      out.flush();
      assertEquals("old", Files.readString(file));
    });
    assertEquals("new", Files.readString(file));
  }

  @Test
  void failureLeavesTheOldFileAndNoTemporaryOne() throws Exception {
    Files.writeString(file, "old");
    Files.writeString(folder.resolve("wall.txt.bak"), "older");
    AtomicFile.Content failing = out -> {
      out.write(new byte[200_000]);
      throw new IOException("no room");
    };
    assertThrows(IOException.class, () -> AtomicFile.writeKeepingBackup(file, failing));
    assertEquals("old", Files.readString(file));
    assertEquals("older", Files.readString(folder.resolve("wall.txt.bak")));
    assertEquals(List.of("wall.txt", "wall.txt.bak"), names());
  }

  @Test
  void failureThatIsNoIoExceptionLeavesNothing() throws Exception {
    AtomicFile.Content failing = out -> {
      throw new IllegalStateException();
    };
    assertThrows(IllegalStateException.class, () -> AtomicFile.write(file, failing));
    assertEquals(List.of(), names());
  }

  @Test
  void contentMayCloseTheStream() throws Exception {
    AtomicFile.write(file, out -> {
      out.write('x');
      out.close();
    });
    assertEquals("x", Files.readString(file));
  }

  /** A rename would put a file in the place of the pipe; the same goes for {@code /dev/null}. */
  @Test
  void pipeIsNotReplaced() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")));
    assertEquals(0, new ProcessBuilder("/usr/bin/mkfifo", file.toString()).start().waitFor());
    IOException e = assertThrows(IOException.class, () -> AtomicFile.write(file, text("tile")));
    assertTrue(e.getMessage().contains("wall.txt is a device or a pipe, not a file; "), e.getMessage());
    assertEquals(List.of("wall.txt"), names());
    assertFalse(Files.isRegularFile(file));
  }

  @Test
  void keepsOneBackup() throws Exception {
    for (String content : List.of("1", "2", "3")) {
      AtomicFile.writeKeepingBackup(file, text(content));
    }
    assertEquals("3", Files.readString(file));
    assertEquals("2", Files.readString(folder.resolve("wall.txt.bak")));
    assertEquals(List.of("wall.txt", "wall.txt.bak"), names());
  }

  @Test
  void firstWriteHasNoBackup() throws Exception {
    AtomicFile.writeKeepingBackup(file, text("1"));
    assertEquals(List.of("wall.txt"), names());
  }

  @Test
  void linkStaysALink() throws Exception {
    Path real = Files.createDirectory(folder.resolve("real")).resolve("wall.txt");
    Files.writeString(real, "old");
    Files.createSymbolicLink(file, Path.of("real/wall.txt"));
    AtomicFile.write(file, text("new"));
    assertTrue(Files.isSymbolicLink(file));
    assertEquals("new", Files.readString(real));
  }

  @Test
  void linkToNothingIsFilled() throws Exception {
    Files.createSymbolicLink(file, Path.of("later.txt"));
    AtomicFile.write(file, text("new"));
    assertTrue(Files.isSymbolicLink(file));
    assertEquals("new", Files.readString(folder.resolve("later.txt")));
  }

  @Test
  void linkInACircleIsRefused() throws Exception {
    Files.createSymbolicLink(file, Path.of("wall.txt"));
    assertMessage("circle", assertThrows(IOException.class, () -> AtomicFile.write(file, text("new"))));
  }

  @Test
  void permissionsAreKept() throws Exception {
    assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Files.writeString(file, "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
    AtomicFile.write(file, text("new"));
    assertEquals("rw-rw----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
  }

  @Test
  void folderIsRefused() {
    IOException e = assertThrows(IOException.class, () -> AtomicFile.write(folder, text("x")));
    assertMessage("is a folder", e);
  }

  @Test
  void missingFolderIsNamed() {
    Path lost = folder.resolve("lost/wall.txt");
    IOException e = assertThrows(NoSuchFileException.class, () -> AtomicFile.write(lost, text("x")));
    assertMessage("lost is not there", e);
    assertFalse(Files.exists(lost.getParent()));
  }

  @Test
  void readOnlyFileIsRefused() throws Exception {
    Files.writeString(file, "old");
    assumeTrue(file.toFile().setWritable(false));
    assumeFalse(Files.isWritable(file), "this account may write anywhere");
    assertMessage("read-only", assertThrows(IOException.class, () -> AtomicFile.write(file, text("new"))));
  }

  private static AtomicFile.Content text(String text) {
    return out -> out.write(text.getBytes());
  }

  private static void assertMessage(String part, Exception e) {
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> list = Files.list(folder)) {
      return list.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }
}
