// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file.internal;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.SortedMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import muralbench.base.InputException;
import muralbench.base.Messages;

/**
 * The three parts of a .mural file.
 *
 * @param manifest content of {@code manifest.json}
 * @param xmi content of {@code mural.xmi}
 * @param assets contents of {@code assets/HASH} by hash
 */
public record Container(byte[] manifest, byte[] xmi, SortedMap<String, byte[]> assets) {
  static final String MANIFEST = "manifest.json";
  static final String XMI = "mural.xmi";
  static final String ASSETS = "assets/";

  /** Largest model that is read or written, bytes; a mural of a hundred panels takes well under 1 MB. */
  static final int LARGEST_XMI = 32 << 20;

  /** Largest sum of all parts that is read or written, bytes. */
  static final long LARGEST_TOTAL = 512L << 20;

  /**
   * The same in every file, so that the same mural gives the same bytes. Not 1 January 1980, the zip format's zero, for
   * which a second time with the local zone would be written.
   */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

  /**
   * Reads and checks the zip.
   *
   * @throws InputException if it is no zip, not a mural, unsafe, too large or damaged
   */
  public static Container read(Path file, FileProblem problem) throws InputException, IOException {
    return new ContainerReader(file, problem).read();
  }

  /** Refuses what could not be read again. */
  public void refuseTooLarge(Path file) throws IOException {
    long total = xmi.length;
    for (byte[] asset : assets.values()) {
      total += asset.length;
    }
    if (total > LARGEST_TOTAL || xmi.length > LARGEST_XMI) {
      throw new IOException(Messages.of(Container.class).text("save.tooLarge", "file", file,
          "limit", (xmi.length > LARGEST_XMI ? LARGEST_XMI : LARGEST_TOTAL) >> 20));
    }
  }

  /** Writes the zip: the manifest first, the assets in order of their hashes. */
  public void write(OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out);
    add(zip, MANIFEST, manifest);
    add(zip, XMI, xmi);
    for (Map.Entry<String, byte[]> asset : assets.entrySet()) {
      add(zip, ASSETS + asset.getKey(), asset.getValue());
    }
    zip.finish();
  }

  private static void add(ZipOutputStream zip, String name, byte[] content) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(TIME);
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }
}
