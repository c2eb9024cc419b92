// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.export.Exporter;
import muralbench.export.ExporterIds;
import muralbench.export.ExporterRegistry;
import muralbench.export.SampleMural;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CuttingListExporterTest {
  @TempDir
  Path folder;

  @Test
  void writesTheListAsPdfCsvAndXlsxAndThePiecesAsCsv() throws Exception {
    Exporter exporter = ExporterRegistry.standard().find(ExporterIds.CUTTING_LIST).orElseThrow();
    List<Path> files;
    try (OutputFolder output = OutputFolder.open(folder)) {
      exporter.export(SampleMural.context(SampleMural.inches()), output, Progress.NONE);
      files = output.commit();
    }
    assertEquals(List.of("cutting-list.pdf", "cutting-list.csv", "pieces.csv", "order.csv",
        "cutting-list.xlsx"),
        files.stream().map(file -> file.getFileName().toString()).toList());
    assertTrue(Files.readString(folder.resolve("pieces.csv")).startsWith("key,panel,course,position,kind,tile,"));
    assertTrue(Files.readString(folder.resolve("cutting-list.csv")).startsWith("number,kind,tile,quantity,"));
    assertEquals("tile,laid,least,spare_percent,spares,order,box,boxes\r\nT6,12,12,10,2,14,,\r\n",
        Files.readString(folder.resolve("order.csv")));
  }
}
