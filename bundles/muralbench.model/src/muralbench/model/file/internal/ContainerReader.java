// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file.internal;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import muralbench.base.InputException;
import muralbench.model.file.Assets;

/**
 * Reads the zip without trusting it. Names are checked before anything is unpacked; sizes that the directory admits are
 * held against the limits, and unpacking stops as soon as an entry gives more than it admitted. So memory is taken only
 * for what was announced and allowed.
 */
final class ContainerReader {
  private static final int LARGEST_MANIFEST = 64 << 10;
  private static final int MOST_ENTRIES = 10_000;

  /** Deflate reaches 1032 : 1 on nothing but repetition; XMI of many equal panels stays under 100 : 1. */
  private static final int HIGHEST_RATIO = 200;
  private static final long RATIO_MATTERS_FROM = 1 << 20;

  private static final Pattern SAFE_NAME = Pattern.compile("[^/\\\\:\\p{Cntrl}]+(/[^/\\\\:\\p{Cntrl}]+)*/?");
  private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

  private final Path file;
  private final FileProblem problem;

  ContainerReader(Path file, FileProblem problem) {
    this.file = file;
    this.problem = problem;
  }

  Container read() throws InputException, IOException {
    refuseNoZip();
    if (Files.size(file) > Container.LARGEST_TOTAL) {
      throw tooLarge(Container.LARGEST_TOTAL);
    }
    try (ZipFile zip = new ZipFile(file.toFile())) {
      List<? extends ZipEntry> entries = checkedEntries(zip);
      byte[] manifest = content(zip, entries, Container.MANIFEST, LARGEST_MANIFEST);
      byte[] xmi = content(zip, entries, Container.XMI, Container.LARGEST_XMI);
      return new Container(manifest, xmi, assets(zip, entries));
    } catch (ZipException | EOFException | IllegalArgumentException e) {
      // The last is what the JDK throws for some damaged names and time stamps.
      throw problem.of(e, "damaged");
    }
  }

  /** A zip starts with a local header (APPNOTE 4.3.7); one without is no mural rather than a damaged one. */
  private void refuseNoZip() throws InputException, IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] start = in.readNBytes(4);
      if (start.length < 4 || start[0] != 'P' || start[1] != 'K' || start[2] != 3 || start[3] != 4) {
        throw problem.of("notMural");
      }
    }
  }

  private List<? extends ZipEntry> checkedEntries(ZipFile zip) throws InputException {
    if (zip.size() > MOST_ENTRIES) {
      throw problem.of("tooMany", "limit", MOST_ENTRIES);
    }
    List<ZipEntry> entries = new ArrayList<>(Collections.list(zip.entries()));
    Set<String> names = new HashSet<>();
    long total = 0;
    for (ZipEntry entry : entries) {
      refuseUnsafe(entry.getName());
      if (!names.add(entry.getName())) {
        throw problem.of("duplicate", "name", entry.getName());
      }
      total += Math.max(0, entry.getSize());
      if (total > Container.LARGEST_TOTAL) {
        throw tooLarge(Container.LARGEST_TOTAL);
      }
    }
    return entries;
  }

  private void refuseUnsafe(String name) throws InputException {
    boolean safe = SAFE_NAME.matcher(name).matches();
    for (String part : name.split("/", -1)) {
      safe &= !part.equals("..") && !part.equals(".");
    }
    if (!safe) {
      throw problem.of("unsafeName", "name", name.replaceAll("\\p{Cntrl}", "?"));
    }
  }

  private byte[] content(ZipFile zip, List<? extends ZipEntry> entries, String name, int limit)
      throws InputException, IOException {
    for (ZipEntry entry : entries) {
      if (entry.getName().equals(name)) {
        return content(zip, entry, limit);
      }
    }
    throw problem.of("notMural");
  }

  private SortedMap<String, byte[]> assets(ZipFile zip, List<? extends ZipEntry> entries)
      throws InputException, IOException {
    SortedMap<String, byte[]> assets = new TreeMap<>();
    for (ZipEntry entry : entries) {
      if (entry.getName().startsWith(Container.ASSETS) && !entry.isDirectory()) {
        String hash = entry.getName().substring(Container.ASSETS.length());
        byte[] content = content(zip, entry, Container.LARGEST_TOTAL);
        if (!HASH.matcher(hash).matches() || !hash.equals(Assets.hash(content))) {
          throw problem.of("damaged");
        }
        assets.put(hash, content);
      }
    }
    return assets;
  }

  private byte[] content(ZipFile zip, ZipEntry entry, long limit) throws InputException, IOException {
    long size = entry.getSize();
    if (size < 0 || size > limit) {
      throw tooLarge(limit);
    }
    if (size > RATIO_MATTERS_FROM && size / HIGHEST_RATIO > entry.getCompressedSize()) {
      throw problem.of("bomb", "name", entry.getName());
    }
    try (InputStream in = zip.getInputStream(entry)) {
      byte[] content = in.readNBytes((int) size);
      if (in.read() >= 0) {
        throw problem.of("bomb", "name", entry.getName());
      }
      refuseDamaged(entry, content);
      return content;
    }
  }

  /** The JDK does not hold an entry against its checksum when it is read through the directory. */
  private void refuseDamaged(ZipEntry entry, byte[] content) throws InputException {
    CRC32 crc = new CRC32();
    crc.update(content);
    if (content.length != entry.getSize() || crc.getValue() != entry.getCrc()) {
      throw problem.of("damaged");
    }
  }

  private InputException tooLarge(long limit) {
    return problem.of("tooLarge", "limit", Math.max(1, limit >> 20));
  }
}
