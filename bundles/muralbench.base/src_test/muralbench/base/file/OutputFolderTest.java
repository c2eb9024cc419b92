// SPDX-License-Identifier: EPL-2.0
package muralbench.base.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFolderTest {
  @TempDir
  Path root;
  Path out;

  @BeforeEach
  void name() {
    out = root.resolve("deep/out");
  }

  @Test
  void filesArriveOnCommit() throws Exception {
    try (OutputFolder folder = OutputFolder.open(out)) {
      write(folder, "a.txt", "A");
      write(folder, "sub/b.txt", "B");
      assertFalse(Files.exists(out));
      assertEquals(List.of(out.resolve("a.txt"), out.resolve("sub/b.txt")), folder.commit());
    }
    assertEquals(List.of("deep", "deep/out", "deep/out/a.txt", "deep/out/sub", "deep/out/sub/b.txt"), tree());
    assertEquals("B", Files.readString(out.resolve("sub/b.txt")));
  }

  @Test
  void nothingIsLeftWithoutCommit() throws Exception {
    try (OutputFolder folder = OutputFolder.open(out)) {
      write(folder, "a.txt", "A");
      folder.create("open.txt").write(1);
    }
    assertEquals(List.of(), tree());
  }

  @Test
  void otherFilesStayAndSameNamesAreReplaced() throws Exception {
    Files.createDirectories(out);
    Files.writeString(out.resolve("mine.txt"), "mine");
    Files.writeString(out.resolve("a.txt"), "old");
    try (OutputFolder folder = OutputFolder.open(out)) {
      write(folder, "a.txt", "new");
      assertEquals("old", Files.readString(out.resolve("a.txt")));
      folder.commit();
    }
    assertEquals(List.of("deep", "deep/out", "deep/out/a.txt", "deep/out/mine.txt"), tree());
    assertEquals("new", Files.readString(out.resolve("a.txt")));
  }

  @Test
  void failedCommitTakesEverythingBack() throws Exception {
    Files.createDirectories(out);
    Files.writeString(out.resolve("a.txt"), "old");
    Files.writeString(out.resolve("block"), "a file where a folder is needed");
    List<String> before = tree();
    try (OutputFolder folder = OutputFolder.open(out)) {
      for (String name : List.of("a.txt", "fresh/b.txt", "block/c.txt")) {
        write(folder, name, "new");
      }
      assertThrows(IOException.class, folder::commit);
    }
    assertEquals(before, tree());
    assertEquals("old", Files.readString(out.resolve("a.txt")));
  }

  @Test
  void folderInAFilesPlaceIsNamed() throws Exception {
    Files.createDirectories(out.resolve("a.txt"));
    try (OutputFolder folder = OutputFolder.open(out)) {
      write(folder, "a.txt", "new");
      IOException e = assertThrows(IOException.class, folder::commit);
      assertTrue(e.getMessage().contains("a.txt is a folder"), e.getMessage());
    }
  }

  @Test
  void streamLeftOpenIsCompletedByCommit() throws Exception {
    try (OutputFolder folder = OutputFolder.open(out)) {
      folder.create("a.txt").write("A".getBytes());
      folder.commit();
    }
    assertEquals("A", Files.readString(out.resolve("a.txt")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "..", ".", "../a", "a/../../b", "/a", "a/", "a//b", "C:a", "..\\a", "a\\b", "a\0b",
    "a?b", "a\nb"})
  void namesThatLeadOutsideOrFitNoSystemAreRefused(String name) throws Exception {
    try (OutputFolder folder = OutputFolder.open(out)) {
      assertThrows(IllegalArgumentException.class, () -> folder.create(name));
    }
  }

  @Test
  void nameUsedBeforeIsRefusedInEitherCase() throws Exception {
    try (OutputFolder folder = OutputFolder.open(out)) {
      write(folder, "a.txt", "A");
      assertThrows(IllegalArgumentException.class, () -> folder.create("A.TXT"));
    }
  }

  @Test
  void fileInPlaceOfTheFolderIsRefused() throws Exception {
    Files.writeString(root.resolve("deep"), "a file");
    IOException e = assertThrows(IOException.class, () -> OutputFolder.open(out));
    assertTrue(e.getMessage().contains("is a file"), e.getMessage());
  }

  @Test
  void afterCommitNothingMoreIsTaken() throws Exception {
    try (OutputFolder folder = OutputFolder.open(out)) {
      folder.commit();
      assertThrows(IllegalStateException.class, () -> folder.create("late.txt"));
      assertThrows(IllegalStateException.class, folder::commit);
    }
    assertTrue(Files.isDirectory(out));
  }

  @Test
  void linkInACircleIsNamedAndNothingIsLeft() throws Exception {
    Files.createSymbolicLink(root.resolve("deep"), Path.of("round"));
    Files.createSymbolicLink(root.resolve("round"), Path.of("deep"));
    IOException e = assertThrows(IOException.class, () -> OutputFolder.open(out));
    assertTrue(e.getMessage().contains("leads round in a circle; "), e.getMessage());
  }

  @Test
  void linkToNothingIsNamed() throws Exception {
    Files.createSymbolicLink(root.resolve("deep"), Path.of("gone"));
    IOException e = assertThrows(IOException.class, () -> OutputFolder.open(out));
    assertTrue(e.getMessage().contains("a link to a folder that is not there; "), e.getMessage());
  }

  private static void write(OutputFolder folder, String name, String text) throws IOException {
    try (OutputStream stream = folder.create(name)) {
      stream.write(text.getBytes());
    }
  }

  private List<String> tree() throws IOException {
    try (Stream<Path> walk = Files.walk(root)) {
      return walk.filter(p -> !p.equals(root)).map(p -> root.relativize(p).toString().replace('\\', '/')).sorted()
          .toList();
    }
  }
}
