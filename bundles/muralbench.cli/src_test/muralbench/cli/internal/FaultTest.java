// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.cli.internal.CommandBed.Result;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.export.ExporterRegistry;
import muralbench.setout.bond.BondRegistry;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultTest {
  @TempDir
  private Path folder;

  private Path log;

  @AfterEach
  void clearAway() throws IOException {
    if (log != null) {
      Files.delete(log);
    }
  }

  @Test
  void aFaultOfOursIsExitThreeAndTheDetailsGoToALog() throws IOException {
    Result result = failing(() -> {
      throw new IllegalStateException("spilled glaze");
    });

    assertEquals(ExitCode.OUR_FAULT, result.code());
    assertTrue(result.err().startsWith("muralbench: Muralbench itself failed: "), result.err());
    assertEquals(2, result.err().lines().count(), result.err());
    assertTrue(Files.readString(log).contains("\tat muralbench.cli.internal.Exporting"), "no details in " + log);
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

  @Test
  void halfAListOfPiecesDoesNotLookLikeAll() throws IOException {
    Result result = piecesToOutputThatFails("No space left on device");

    assertEquals(ExitCode.BAD_INPUT, result.code());
    assertTrue(result.err().startsWith("muralbench: Standard output"), result.err());
  }

  /** As in {@code pieces FILE | head}; the system's text for EPIPE. */
  @Test
  void aReaderThatHasSeenEnoughIsNoFailure() throws IOException {
    Result result = piecesToOutputThatFails("Broken pipe");

    assertEquals(ExitCode.DONE, result.code());
    assertEquals("", result.err());
  }

  private Result piecesToOutputThatFails(String reason) throws IOException {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    OutputStream failing = new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        throw new IOException(reason);
      }
    };
    Desk desk = new Desk(BondRegistry.standard(), ExporterRegistry.standard(), LocalDate.of(2030, 5, 6),
        new Output(failing, StandardCharsets.UTF_8), new PrintStream(err, true));
    int code = new Main(desk, "1.2.3").run("pieces", new CommandBed(folder).brief().toString());
    return new Result(code, "", err.toString());
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
      Result result = bed.run("export", bed.brief(), "--out", folder.resolve("out"));
      if (result.code() == ExitCode.OUR_FAULT) {
        log = Path.of(result.err().strip().replaceFirst("(?s).* attach ", ""));
      }
      return result;
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
