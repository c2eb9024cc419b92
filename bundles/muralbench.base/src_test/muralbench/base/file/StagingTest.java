// SPDX-License-Identifier: EPL-2.0
package muralbench.base.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StagingTest {
  @TempDir
  Path root;

  @Test
  void whatAKilledProcessLeftIsRemoved() throws Exception {
    Process other = other("wait");
    Path left = Path.of(other.inputReader().readLine());
    assertTrue(Files.exists(left.resolve("new/half.pdf")));
    other.destroyForcibly().waitFor(); // SIGKILL where there are signals
    assertTrue(Files.exists(left));

    OutputFolder.open(root).close();

    assertFalse(Files.exists(left));
  }

  @Test
  void whatARunningProcessWorksWithIsLeftAlone() throws Exception {
    Process other = other("wait");
    try {
      Path used = Path.of(other.inputReader().readLine());
      OutputFolder.open(root).close();
      assertTrue(Files.exists(used.resolve("new/half.pdf")));
    } finally {
      other.destroyForcibly().waitFor();
    }
  }

  @Test
  void twoAtATimeInOneProcessDoNotRemoveEachOther() throws Exception {
    try (Staging first = Staging.in(root); Staging second = Staging.in(root)) {
      assertTrue(Files.exists(first.folder()) && Files.exists(second.folder()));
      assertEquals(0, other("once").waitFor());
      assertTrue(Files.exists(first.folder()) && Files.exists(second.folder()), "the locks were let go");
    }
  }

  @Test
  void withoutALockOnlyTheOldIsRemoved() throws Exception {
    Path fresh = Files.createDirectory(root.resolve(".muralbench-fresh.tmp"));
    Path old = Files.createDirectory(root.resolve(".muralbench-old.tmp"));
    Path mine = Files.createDirectory(root.resolve("mine.tmp"));
    FileTime before = FileTime.from(Instant.now().minus(Duration.ofMinutes(61)));
    Files.setLastModifiedTime(old, before);
    Files.setLastModifiedTime(mine, before);
    Staging.in(root).close();
    assertTrue(Files.exists(fresh) && Files.exists(mine));
    assertFalse(Files.exists(old));
  }

  @Test
  void nothingIsLeftAfterClosing() throws Exception {
    Staging.in(root).close();
    assertEquals(0, root.toFile().list().length);
  }

  private Process other(String what) throws IOException {
    return new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
        place(Staging.class) + File.pathSeparator + place(Other.class), Other.class.getName(), root.toString(), what)
        .redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  private static Path place(Class<?> type) {
    return Path.of(URI.create(type.getProtectionDomain().getCodeSource().getLocation().toString()));
  }

  /** Runs in a process of its own: starts to write a file and tells where. */
  static final class Other {
    private Other() {}

    public static void main(String[] arguments) throws Exception {
      try (Staging staging = Staging.in(Path.of(arguments[0]))) {
        Path half = staging.folder().resolve("new/half.pdf");
        Files.createDirectories(half.getParent());
        Files.writeString(half, "half");
        System.out.println(staging.folder());
        System.out.flush();
        if (arguments[1].equals("wait")) {
          Thread.sleep(60_000);
        }
      }
    }
  }
}
