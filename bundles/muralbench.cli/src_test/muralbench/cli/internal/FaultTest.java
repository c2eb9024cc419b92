// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.cli.internal.CommandBed.Result;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultTest {
  @TempDir
  private Path folder;

  @Test
  void aFaultOfOursIsExitThreeAndTheDetailsGoToALog() throws IOException {
    Result result = failing(() -> {
      throw new IllegalStateException("spilled glaze");
    });

    assertEquals(ExitCode.OUR_FAULT, result.code());
    assertTrue(result.err().startsWith("muralbench: Muralbench itself failed: "), result.err());
    assertEquals(2, result.err().lines().count(), result.err());
    Path log = Path.of(result.err().strip().replaceFirst("(?s).* attach ", ""));
    assertTrue(Files.readString(log).contains("\tat muralbench.cli.internal.Exporting"), "no details in " + log);
    Files.delete(log);
  }

  @Test
  void endlessRecursionIsAFaultToo() {
    assertEquals(ExitCode.OUR_FAULT, failing(this::endless).code());
  }

  @Test
  void aFullDiskIsToldPlainly() {
    Result result = failing(() -> {
      throw new IOException("No space left on device");
    });

    assertEquals(ExitCode.BAD_INPUT, result.code());
    assertTrue(result.err().startsWith("muralbench: No space left on device."), result.err());
  }

  @Test
  void nothingIsLeftOfAFailedExport() throws IOException {
    failing(() -> {
      throw new IllegalStateException();
    });

    assertFalse(Files.exists(folder.resolve("out")));
    assertEquals(1, Files.list(folder).count(), "only the brief");
  }

  private int endless() {
    return endless() + 1;
  }

  private interface Failure {
    void happen() throws IOException;
  }

  private Result failing(Failure failure) {
    try {
      CommandBed bed = new CommandBed(folder).with(new Failing(failure));
      return bed.run("export", bed.brief(), "--out", folder.resolve("out"));
    } catch (IOException disk) {
      throw new AssertionError(disk);
    }
  }

  /** Writes half a file, then fails. */
  private record Failing(Failure failure) implements Exporter {
    @Override
    public String id() {
      return "failing";
    }

    @Override
    public String label() {
      return "Failing";
    }

    @Override
    public String purpose() {
      return "Fails.";
    }

    @Override
    public void export(ExportContext context, OutputFolder output, Progress progress) throws IOException {
      output.create("half.txt").write(1);
      failure.happen();
    }
  }
}
