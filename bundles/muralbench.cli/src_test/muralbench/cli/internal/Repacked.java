// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Archives with one entry exchanged. */
final class Repacked {
  private Repacked() {}

  static String text(Path archive, String entry) throws IOException {
    try (ZipFile zip = new ZipFile(archive.toFile())) {
      return new String(zip.getInputStream(zip.getEntry(entry)).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  static void replace(Path archive, String entry, String text, Path target) throws IOException {
    try (ZipFile from = new ZipFile(archive.toFile());
        ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(target))) {
      for (ZipEntry old : from.stream().toList()) {
        to.putNextEntry(new ZipEntry(old.getName()));
        to.write(old.getName().equals(entry) ? text.getBytes(StandardCharsets.UTF_8)
            : from.getInputStream(old).readAllBytes());
      }
    }
  }
}
