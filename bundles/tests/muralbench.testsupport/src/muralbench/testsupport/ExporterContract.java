// SPDX-License-Identifier: EPL-2.0
package muralbench.testsupport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import muralbench.base.CancelledException;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.export.ExportContext;
import muralbench.export.Exporter;
import muralbench.export.Paper;
import muralbench.setout.MuralSetOut;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * What every exporter promises; see {@link Exporter}. A test class of an exporter extends this one and names the
 * exporter; what its documents hold is for its own tests to show.
 */
public abstract class ExporterContract {
  @TempDir
  Path folder;

  /** The exporters to be tried. */
  protected abstract Stream<Exporter> exporters();

  @FunctionalInterface
  private interface Promise {
    void holds(Exporter exporter) throws Exception;
  }

  private Stream<DynamicTest> each(Promise promise) {
    return exporters().map(exporter -> dynamicTest(exporter.id(), () -> promise.holds(exporter)));
  }

  @TestFactory
  Stream<DynamicTest> hasAnIdForScriptsAndTextsForPeople() {
    return each(exporter -> {
      assertTrue(exporter.id().matches("[a-z][a-z0-9]*(-[a-z0-9]+)*"), exporter.id());
      assertFalse(exporter.label().isBlank());
      assertTrue(exporter.purpose().endsWith("."), "the purpose is a sentence");
    });
  }

  @TestFactory
  Stream<DynamicTest> writesFilesThatAreNotEmpty() {
    return each(exporter -> {
      List<Path> files = export(exporter, SampleWalls.inches(), Paper.LETTER, new Watched(Integer.MAX_VALUE));
      assertFalse(files.isEmpty());
      for (Path file : files) {
        assertTrue(Files.size(file) > 0, file.toString());
      }
    });
  }

  @TestFactory
  Stream<DynamicTest> writesTheSameBytesForTheSameMural() {
    return each(exporter -> {
      List<Path> once = export(exporter, SampleWalls.inches(), Paper.LETTER, Progress.NONE);
      List<Path> again = export(exporter, SampleWalls.inches(), Paper.LETTER, Progress.NONE);
      assertEquals(once.size(), again.size());
      for (int i = 0; i < once.size(); i++) {
        assertEquals(-1, Files.mismatch(once.get(i), again.get(i)), once.get(i).getFileName().toString());
      }
    });
  }

  @TestFactory
  Stream<DynamicTest> knowsMillimetresAndEveryPaper() {
    return exporters().flatMap(exporter -> Stream.of(Paper.values())
        .map(paper -> dynamicTest(exporter.id() + ' ' + paper.word(), () -> assertFalse(
            export(exporter, SampleWalls.millimetres(), paper, new Watched(Integer.MAX_VALUE)).isEmpty()))));
  }

  @TestFactory
  Stream<DynamicTest> keepsToItsFolderWhateverTheNames() {
    return each(exporter -> {
      for (Path file : export(exporter, SampleWalls.hostile(), Paper.A4, new Watched(Integer.MAX_VALUE))) {
        assertTrue(file.normalize().startsWith(folder), "not in the folder: " + file);
      }
    });
  }

  @TestFactory
  Stream<DynamicTest> tellsHowFarItHasCome() {
    return each(exporter -> {
      Watched progress = new Watched(Integer.MAX_VALUE);
      export(exporter, SampleWalls.inches(), Paper.LETTER, progress);
      assertEquals(1, progress.begun, "begin is called once");
      assertTrue(progress.calls > 0 && progress.done <= progress.steps, progress.done + " of " + progress.steps);
    });
  }

  @TestFactory
  Stream<DynamicTest> stopsWhenThePersonCancelsAndLeavesNothing() {
    return each(exporter -> {
      Path into = folder.resolve(exporter.id() + "-cancelled");
      assertThrows(CancelledException.class,
          () -> export(exporter, into, SampleWalls.inches(), Paper.A4, new Watched(0)));
      assertFalse(Files.exists(into), "files of a cancelled export");
    });
  }

  private List<Path> export(Exporter exporter, MuralSetOut setOut, Paper paper, Progress progress) throws Exception {
    return export(exporter, Files.createTempDirectory(folder, exporter.id()), setOut, paper, progress);
  }

  private static List<Path> export(Exporter exporter, Path into, MuralSetOut setOut, Paper paper, Progress progress)
      throws Exception {
    ExportContext context = new ExportContext(setOut, List.of(), paper, LocalDate.of(2026, 3, 14));
    try (OutputFolder output = OutputFolder.open(into)) {
      exporter.export(context, output, progress);
      return output.commit();
    }
  }

  /** Counts what is reported and cancels after some calls. */
  private static final class Watched implements Progress {
    private final int patience;
    private int begun;
    private int steps;
    private int calls;
    private int done;

    Watched(int patience) {
      this.patience = patience;
    }

    @Override
    public void begin(String task, int steps) {
      begun++;
      this.steps = steps;
    }

    @Override
    public void step(int steps) {
      done += steps;
      if (++calls > patience) {
        throw new CancelledException();
      }
    }
  }
}
