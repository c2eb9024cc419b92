// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import muralbench.base.InputException;
import muralbench.base.ProgramVersion;
import muralbench.base.file.AtomicFile;
import muralbench.model.Mural;
import muralbench.model.file.internal.Consistency;
import muralbench.model.file.internal.Container;
import muralbench.model.file.internal.FileProblem;
import muralbench.model.file.internal.Manifest;
import muralbench.model.file.internal.Migrations;
import muralbench.model.file.internal.MuralXmi;

/**
 * Reads and writes {@code .mural} files: a zip with {@code manifest.json}, {@code mural.xmi} and the {@link Assets} by
 * their content. Saving the same mural twice gives the same bytes.
 */
public final class MuralFile {
  private MuralFile() {}

  /**
   * Reads a mural, migrating an older schema version. The mural is the only content of an EMF resource of its own,
   * which is in no resource set; its assets are {@link Assets#of}.
   *
   * @throws InputException if the file is missing, is a folder, is damaged, unsafe or newer than this program
   * @throws IOException if the disk fails
   */
  public static Mural read(Path file) throws InputException, IOException {
    FileProblem problem = new FileProblem(file);
    refuseUnreadable(file, problem);
    Container container = Container.read(file, problem);
    Manifest manifest = Manifest.parse(container.manifest(), problem);
    byte[] xmi = Migrations.toCurrent(manifest.schemaVersion(), container.xmi(), problem);
    Mural mural = MuralXmi.read(xmi, file, problem);
    Assets assets = Assets.of(mural);
    container.assets().values().forEach(assets::add);
    return mural;
  }

  /**
   * Writes a mural with its assets, whole or not at all, and keeps one backup, {@code NAME.bak}, of the file that was
   * there. The mural itself is not touched.
   *
   * @throws IOException if it cannot be written, or if the mural is not whole, for instance if a panel refers to a tile
   *     that is not in it; the old file is then untouched
   */
  public static void write(Mural mural, Path file) throws IOException {
    Consistency.refuseBroken(mural);
    Manifest manifest = new Manifest(SchemaVersion.CURRENT, ProgramVersion.CURRENT);
    Assets assets = Assets.of(mural);
    SortedMap<String, byte[]> contents = new TreeMap<>();
    assets.hashes().forEach(hash -> contents.put(hash, assets.find(hash).orElseThrow()));
    Container container = new Container(manifest.bytes(), MuralXmi.bytes(mural), contents);
    container.refuseTooLarge(file);
    AtomicFile.writeKeepingBackup(file, container::write);
  }

  private static void refuseUnreadable(Path file, FileProblem problem) throws InputException {
    if (!Files.exists(file)) {
      throw problem.of("missing");
    }
    if (Files.isDirectory(file)) {
      throw problem.of("folder");
    }
    if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
      throw problem.of("unreadable");
    }
  }
}
