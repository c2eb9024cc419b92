// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import muralbench.export.Exporter;
import muralbench.export.ExporterRegistry;
import muralbench.setout.bond.BondRegistry;

/** Runs the command in a folder of its own and catches what it says. */
final class CommandBed {
  /** A brief with one panel and an outlet that nothing is wrong with. */
  static final String BRIEF = """
      { "format": "muralbench-brief", "version": 1, "title": "Heron pond", "units": "in",
        "site": { "exposure": "interior-dry" },
        "tiles": [ { "id": "T6", "width": 6, "height": 6, "thickness": "3/8", "facialVariation": "1/32",
                     "waterAbsorption": 0.3 } ],
        "panels": [ { "id": "A", "title": "Reeds", "tile": "T6", "joint": "1/8",
            "outline": { "rectangle": [0, 36, 72, 48] },
            "openings": [ { "id": "A1", "kind": "outlet", "outline": { "rectangle": [20, 42, 2.25, 3.5] } } ],
            "bond": { "kind": "grid", "offset": 0, "rotation": 0 },
            "origin": "balanced" } ] }
      """;

  private final Path folder;
  private ExporterRegistry exporters = ExporterRegistry.standard();

  CommandBed(Path folder) {
    this.folder = folder;
  }

  /** What a command did. */
  record Result(int code, String out, String err) {}

  CommandBed with(Exporter exporter) {
    exporters = exporters.with(List.of(exporter));
    return this;
  }

  Result run(Object... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Desk desk = new Desk(BondRegistry.standard(), exporters, LocalDate.of(2030, 5, 6),
        new Output(out, StandardCharsets.UTF_8), stream(err));
    int code = new Main(desk, "1.2.3").run(Stream.of(arguments).map(String::valueOf).toArray(String[]::new));
    return new Result(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  Path brief() throws IOException {
    return file("heron.json", BRIEF);
  }

  Path path(String name) {
    return folder.resolve(name);
  }

  /** Every file of the folder with its content. */
  TreeMap<String, String> content() throws IOException {
    TreeMap<String, String> content = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.toList()) {
        content.put(folder.relativize(path).toString(), Files.isDirectory(path) ? "folder"
            : new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1));
      }
    }
    return content;
  }

  private static PrintStream stream(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, true, StandardCharsets.UTF_8);
  }
}
