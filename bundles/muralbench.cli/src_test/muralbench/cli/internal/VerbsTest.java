// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import muralbench.cli.internal.CommandBed.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VerbsTest {
  @TempDir
  private Path folder;

  private CommandBed bed;

  @BeforeEach
  void setUp() {
    bed = new CommandBed(folder);
  }

  @Test
  void newMakesAMuralThatReadsLikeItsBrief() throws IOException {
    Path mural = bed.path("heron.mural");

    assertEquals(quiet(), bed.run("new", bed.brief(), "--out", mural));
    assertEquals(bed.run("pieces", bed.brief()), bed.run("pieces", mural));
  }

  @Test
  void newKeepsTheFileItReplacesAsBackup() throws IOException {
    Path mural = bed.file("heron.mural", "older");

    bed.run("new", bed.brief(), "--out", mural);

    assertEquals("older", Files.readString(bed.path("heron.mural.bak")));
    assertTrue(Files.readString(mural, StandardCharsets.ISO_8859_1).startsWith("PK"));
  }

  @Test
  void piecesOfOnePanelComeWithTheirOwnTotals() throws IOException {
    Path two = bed.file("two.json", CommandBed.BRIEF.replace("\"panels\": [", """
        "panels": [ { "id": "B", "tile": "T6", "joint": "1/8", "outline": { "rectangle": [100, 0, 12.125, 6] },
          "bond": { "kind": "grid" }, "origin": "balanced" },"""));

    String json = bed.run("pieces", two, "--panel", "B").out();

    assertTrue(json.startsWith("{\"panels\":[{\"id\":\"B\",\"area\":"), json);
    assertTrue(json.contains("\"totals\":{\"pieces\":2,\"whole\":2,\"cut\":0,\"tilesToOrder\":2}"), json);
  }

  @Test
  void piecesOfAnUnknownPanelAreBadInput() throws IOException {
    Result result = bed.run("pieces", bed.brief(), "--panel", "Z");

    assertEquals(ExitCode.BAD_INPUT, result.code());
    assertEquals("", result.out());
    assertTrue(result.err().contains("Z") && result.err().contains("A"), result.err());
  }

  @ParameterizedTest
  @CsvSource({"sheets,.pdf", "cuts,.pdf", "cuts,.csv", "cuts,.xlsx", "export,.svg", "export,.json", "export,.xlsx"})
  void documentsAreWrittenQuietly(String verb, String ending) throws IOException {
    Path out = bed.path("out");

    assertEquals(quiet(), bed.run(verb, bed.brief(), "--out", out, "--paper", "A3"));
    assertTrue(bed.content().keySet().stream().anyMatch(name -> name.startsWith("out") && name.endsWith(ending)),
        bed.content().keySet().toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"sheets", "cuts", "export"})
  void otherFilesInTheFolderStay(String verb) throws IOException {
    Files.createDirectory(bed.path("out"));
    bed.file("out/notes.txt", "mine");

    bed.run(verb, bed.brief(), "--out", bed.path("out"));

    assertEquals("mine", Files.readString(bed.path("out/notes.txt")));
    assertTrue(bed.content().keySet().stream().noneMatch(name -> name.contains("tmp")), "something temporary stayed");
  }

  @Test
  void aBrokenRuleIsExitOneAndNamedOnTheErrorStreamWithTheDocumentsWritten() throws IOException {
    Path out = bed.path("out");

    Result result = bed.run("sheets", ruleBreaker(), "--out", out);

    assertEquals(ExitCode.RULE_BROKEN, result.code());
    assertEquals("", result.out());
    assertTrue(result.err().startsWith("error "), result.err());
    assertTrue(Files.isDirectory(out));
  }

  @Test
  void checkTellsPeopleOnStandardOutput() throws IOException {
    Result result = bed.run("check", ruleBreaker());

    assertEquals(ExitCode.RULE_BROKEN, result.code());
    assertTrue(result.out().startsWith("error "), result.out());
    assertEquals("", result.err());
  }

  @Test
  void checkOfASoundMuralIsExitZero() throws IOException {
    assertEquals(ExitCode.DONE, bed.run("check", bed.brief()).code());
  }

  @Test
  void checkTellsProgramsInJson() throws IOException {
    Result result = bed.run("check", ruleBreaker(), "--json");

    assertEquals(ExitCode.RULE_BROKEN, result.code());
    assertTrue(result.out().startsWith("{\"findings\":[{\"code\":\"joint."), result.out());
    assertTrue(result.out().contains("\"grade\":\"error\",\"place\":\"A\""), result.out());
    assertEquals(1, result.out().lines().count());
  }

  @Test
  void demoWritesTheMuralAndItsDocumentsAndSaysWhere() throws IOException {
    Path out = bed.path("demo folder");

    Result result = bed.run("demo", "--out", out);

    assertEquals(new Result(ExitCode.DONE, result.out(), ""), result);
    assertEquals(out.resolve("demo.mural").toString(), result.out().lines().findFirst().orElse(""));
    assertTrue(result.out().lines().count() > 5, result.out());
    assertTrue(result.out().lines().allMatch(line -> Files.isRegularFile(Path.of(line))), result.out());
  }

  @Test
  void demoAgainKeepsAMuralThatWasWorkedOn() throws IOException {
    bed.run("demo", "--out", folder);
    bed.file("demo.mural", "worked on");

    assertEquals(ExitCode.DONE, bed.run("demo", "--out", folder).code());
    assertEquals("worked on", Files.readString(bed.path("demo.mural.bak")));
  }

  @Test
  void aFileIsKnownByItsContent() throws IOException {
    bed.run("new", bed.brief(), "--out", bed.path("a.mural"));
    Path misnamedMural = Files.move(bed.path("a.mural"), bed.path("a.json"));
    Path misnamedBrief = bed.file("b.mural", "\uFEFF\n " + CommandBed.BRIEF);

    assertEquals(bed.run("pieces", bed.brief()), bed.run("pieces", misnamedMural));
    assertEquals(bed.run("pieces", bed.brief()), bed.run("pieces", misnamedBrief));
  }

  @Test
  void readingChangesNothing() throws IOException {
    Path brief = bed.brief();
    TreeMap<String, String> before = bed.content();

    bed.run("check", brief);
    bed.run("pieces", brief);

    assertEquals(before, bed.content());
  }

  /** A joint too narrow for the spread of the tiles: ANSI A108.02, 4.3.8 asks for three times the spread. */
  private Path ruleBreaker() throws IOException {
    return bed.file("narrow.json",
        CommandBed.BRIEF.replace("\"facialVariation\": \"1/32\"", "\"facialVariation\": \"1/16\""));
  }

  private static Result quiet() {
    return new Result(ExitCode.DONE, "", "");
  }
}
