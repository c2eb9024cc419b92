// SPDX-License-Identifier: EPL-2.0
package muralbench.endtoend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Starts the built product through {@code releng/muralbench}, as a person in a shell does, without a display. */
@DisabledOnOs(OS.WINDOWS)
class CommandTest {
  private static final String BRIEF = """
      { "format": "muralbench-brief", "version": 1, "title": "Heron pond", "units": "mm",
        "tiles": [ { "id": "T", "width": 150, "height": 150 } ],
        "panels": [ { "id": "A", "tile": "T", "joint": 3, "outline": { "rectangle": [0, 900, 1200, 603] },
            "bond": { "kind": "grid" }, "origin": "balanced" } ] }
      """;

  /** What the framework remembers between starts; one for all tests, as one person has one. */
  @TempDir
  private static Path cache;

  @TempDir
  private Path temporary;

  private Path folder;

  private record Result(int code, String out, String err) {}

  @BeforeEach
  void setUp() throws IOException {
    folder = Files.createDirectory(temporary.resolve("wall of a pond"));
    Files.writeString(folder.resolve("heron pond.json"), BRIEF);
  }

  @Test
  void demoFromAnywhereWritesFilesAndSaysWhere() throws Exception {
    Result result = run("demo");

    assertEquals(0, result.code(), result.err());
    assertEquals("", result.err());
    List<String> files = result.out().lines().toList();
    assertEquals("muralbench-demo/demo.mural", files.get(0));
    assertTrue(files.stream().allMatch(file -> Files.isRegularFile(folder.resolve(file))), result.out());
    for (String ending : List.of(".pdf", ".csv", ".xlsx", ".svg", ".json")) {
      assertTrue(files.stream().anyMatch(file -> file.endsWith(ending)), "no " + ending + " in " + files);
    }
  }

  @Test
  void piecesAreJsonAndNothingElse() throws Exception {
    Result result = run("pieces", "heron pond.json");

    assertEquals("", result.err());
    JsonNode json = new ObjectMapper().readTree(result.out());
    JsonNode panel = json.at("/panels/0");
    assertEquals("A", panel.get("id").asText());
    // 7 whole and (1200 - 7 * 150 - 8 * 3) / 2 = 63 mm would be under half a tile: 6 whole and 139.5 mm; 4 courses.
    assertEquals(8 * 4, json.at("/totals/pieces").asInt());
    JsonNode corner = panel.at("/pieces/0/outline");
    assertEquals(139.5, corner.at("/1/0").asDouble() - corner.at("/0/0").asDouble(), 1e-6);
  }

  @Test
  void aMuralMadeByTheCommandIsReadBackByIt() throws Exception {
    assertEquals(new Result(0, "", ""), run("new", "heron pond.json", "--out", "heron.mural"));
    assertEquals(run("pieces", "heron pond.json"), run("pieces", "heron.mural"));
  }

  @Test
  void wordsOfTheFrameworkAreRefusedLikeAnyOther() throws Exception {
    Result result = run("check", "heron pond.json", "-clean", "-console");

    assertEquals(2, result.code());
    assertTrue(result.err().contains("-clean") && result.err().contains("-console"), result.err());
  }

  @Test
  void badInputIsTwoLinesExitTwoAndNoFile() throws Exception {
    Files.writeString(folder.resolve("bad.json"), BRIEF.replace("\"joint\": 3", "\"joint\": -3"));

    Result result = run("export", "bad.json", "--out", "out");

    assertEquals(2, result.code());
    assertEquals(2, result.err().lines().count(), result.err());
    assertTrue(result.err().contains("bad.json: /panels/0/joint"), result.err());
    assertFalse(result.err().contains("Exception"), result.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void manyAtOnceDoNotDisturbEachOther() throws Exception {
    ExecutorService shells = Executors.newFixedThreadPool(3);
    try {
      List<Callable<Result>> commands = List.of(() -> run("pieces", "heron pond.json"),
          () -> run("pieces", "heron pond.json"), () -> run("pieces", "heron pond.json"));
      List<Result> results = new ArrayList<>();
      for (Future<Result> result : shells.invokeAll(commands)) {
        results.add(result.get());
      }
      assertEquals(0, results.get(0).code(), results.get(0).err());
      assertEquals(1, results.stream().distinct().count());
    } finally {
      shells.shutdownNow();
    }
  }

  @Test
  void aLinkToTheScriptWorksLikeTheScript() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("mb"), script());

    assertTrue(start(List.of(link.toString(), "--version")).out().startsWith("Muralbench "));
  }

  @Test
  void withoutAVerbAndADisplayItSaysWhatToDo() throws Exception {
    Result result = run();

    assertEquals(2, result.code());
    assertTrue(result.err().contains("DISPLAY"), result.err());
  }

  private Result run(String... arguments) throws Exception {
    List<String> command = new ArrayList<>(List.of(script().toString()));
    command.addAll(List.of(arguments));
    return start(command);
  }

  private Result start(List<String> command) throws Exception {
    Path out = Files.createTempFile(temporary, "out", "");
    Path err = Files.createTempFile(temporary, "err", "");
    ProcessBuilder shell = new ProcessBuilder(command).directory(folder.toFile());
    shell.redirectOutput(out.toFile()).redirectError(err.toFile());
    shell.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY"));
    shell.environment().put("MURALBENCH_BUILD", "no");
    shell.environment().put("XDG_CACHE_HOME", cache.toString());
    Process process = shell.start();
    assertTrue(process.waitFor(2, TimeUnit.MINUTES), "does not end: " + command);
    return new Result(process.exitValue(), Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  private static Path script() {
    Path root = Path.of("").toAbsolutePath();
    while (!Files.isRegularFile(root.resolve("releng/muralbench"))) {
      root = root.getParent();
    }
    return root.resolve("releng/muralbench");
  }
}
