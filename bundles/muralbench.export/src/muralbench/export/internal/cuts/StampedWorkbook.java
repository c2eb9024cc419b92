// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Packs a workbook anew with the date of the document in place of the time of writing, so that the same mural gives the
 * same file and files in version control only change when their content does.
 */
final class StampedWorkbook {
  private static final String PROPERTIES = "docProps/core.xml";
  /** The earliest time a zip can name. */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private StampedWorkbook() {}

  /** Writes a workbook's content. */
  @FunctionalInterface
  interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /** Writes a workbook to {@code out}, which stays open. */
  static void write(Content workbook, LocalDate date, OutputStream out) throws IOException {
    // The library leaves the sizes out of the parts' heads, so that they cannot be read as a stream.
    Path loose = Files.createTempFile("workbook", ".xlsx");
    try {
      try (OutputStream written = new BufferedOutputStream(Files.newOutputStream(loose))) {
        workbook.writeTo(written);
      }
      pack(loose, date, out);
    } finally {
      Files.deleteIfExists(loose);
    }
  }

  private static void pack(Path loose, LocalDate date, OutputStream out) throws IOException {
    ZipOutputStream packed = new ZipOutputStream(out);
    try (ZipFile parts = new ZipFile(loose.toFile())) {
      for (ZipEntry part : Collections.list(parts.entries())) {
        byte[] content = parts.getInputStream(part).readAllBytes();
        ZipEntry copy = new ZipEntry(part.getName());
        copy.setTimeLocal(NO_TIME);
        packed.putNextEntry(copy);
        packed.write(part.getName().equals(PROPERTIES) ? stamped(content, date) : content);
        packed.closeEntry();
      }
    }
    packed.finish();
  }

  private static byte[] stamped(byte[] properties, LocalDate date) {
    String text = new String(properties, StandardCharsets.UTF_8);
    return text.replaceFirst("(<dcterms:created[^>]*>)[^<]*", "$1" + date + "T00:00:00Z")
        .getBytes(StandardCharsets.UTF_8);
  }
}
