// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.TreeMap;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import muralbench.cli.internal.CommandBed.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Input that cannot be used: exit 2, a message that names the place, nothing written, nothing lost. */
class BadInputTest {
  private static final int MEGABYTE = 1 << 20;

  @TempDir
  private Path folder;

  private CommandBed bed;

  @BeforeEach
  void setUp() {
    bed = new CommandBed(folder);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      unknown field              | "title": "Reeds"          | "titel": "Reeds"                             | titel
      wrong unit                 | "joint": "1/8"            | "joint": "3 furlong"                         | joint
      negative length            | "width": 6                | "width": -6                                  | width
      length that is no number   | "width": 6                | "width": "NaN"                               | width
      NaN where JSON has none    | "width": 6                | "width": NaN                                 | heron.json
      endless length             | "width": 6                | "width": 1e300                               | width
      self-crossing outline      | "rectangle": [0, 36, 72, 48] | "polygon": [[0,0],[60,60],[60,0],[0,60]]  | A
      opening outside its panel  | [20, 42, 2.25, 3.5]       | [70, 42, 20, 20]                             | A1
      joint as wide as the tile  | "joint": "1/8"            | "joint": 6                                   | joint
      tile larger than the panel | [0, 36, 72, 48]           | [0, 36, 5, 5]                                | A
      nothing left to tile       | [20, 42, 2.25, 3.5]       | [0, 36, 72, 48]                              | A
      unknown bond               | "kind": "grid"            | "kind": "thatch"                             | thatch
      newer brief                | "version": 1              | "version": 99                                | version
      cut off in the middle      | "panels"                  | "pan                                         | heron.json
      """)
  void aBadBriefIsRefusedByEveryVerb(String what, String good, String bad, String named) throws IOException {
    assertTrue(CommandBed.BRIEF.contains(good), "the test itself is wrong: " + good);
    refusedByEveryVerb(bed.file("heron.json", CommandBed.BRIEF.replace(good, bad)), named);
  }

  @Test
  void twoPanelsWithOneIdAreRefused() throws IOException {
    String panel = CommandBed.BRIEF.substring(CommandBed.BRIEF.indexOf("{ \"id\": \"A\""),
        CommandBed.BRIEF.lastIndexOf("] }"));
    refusedByEveryVerb(bed.file("heron.json", CommandBed.BRIEF.replace(panel, panel + "," + panel)), "A");
  }

  @Test
  void aMissingFileIsRefused() throws IOException {
    refusedByEveryVerb(bed.path("nowhere.mural"), "nowhere.mural: is not there");
  }

  @Test
  void aFolderIsRefused() throws IOException {
    refusedByEveryVerb(Files.createDirectory(bed.path("wall.mural")), "wall.mural: is a folder");
  }

  @ParameterizedTest
  @CsvSource({"empty.mural,''", "empty.json,''", "blank.json,' \n'"})
  void anEmptyFileIsRefused(String name, String content) throws IOException {
    refusedByEveryVerb(bed.file(name, content), name + ": the file is empty");
  }

  /** The first bytes of a PDF (ISO 32000-2, 7.5.2), a PNG (ISO/IEC 15948, 5.2) and a compiled program. */
  @ParameterizedTest
  @CsvSource({"wall.pdf,'%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3'", "wall.png,'\u0089PNG\r\n\u001a\n'",
      "wall,'\u007fELF\u0002'"})
  void aFileOfAnotherKindIsRefused(String name, String start) throws IOException {
    Path file = Files.write(bed.path(name), start.getBytes(StandardCharsets.ISO_8859_1));
    refusedByEveryVerb(file, name + ": this is not a mural or a brief");
  }

  @Test
  void aTruncatedMuralIsRefused() throws IOException {
    bed.run("new", bed.brief(), "--out", bed.path("whole.mural"));
    byte[] whole = Files.readAllBytes(bed.path("whole.mural"));
    for (int length : new int[] {2, 40, whole.length / 2, whole.length - 1}) {
      Path cut = Files.write(bed.path("cut.mural"), Arrays.copyOf(whole, length));
      refusedByEveryVerb(cut, "cut.mural");
    }
  }

  @Test
  void anArchiveWhoseNamesLeadOutIsRefused() throws IOException {
    refusedByEveryVerb(archive("out.mural", "../evil.txt", "evil"), "out.mural");
    assertFalse(Files.exists(folder.resolveSibling("evil.txt")));
  }

  @Test
  void anArchiveThatSwellsIsRefused() throws IOException {
    Path bomb = bed.path("bomb.mural");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(bomb))) {
      zip.setLevel(Deflater.BEST_SPEED);
      zip.putNextEntry(new ZipEntry("mural.xmi"));
      for (int i = 0; i < 1024; i++) {
        zip.write(new byte[MEGABYTE]);
      }
    }
    refusedByEveryVerb(bomb, "bomb.mural");
  }

  @Test
  void aModelWithADocumentTypeIsRefused() throws IOException {
    bed.run("new", bed.brief(), "--out", bed.path("good.mural"));
    String xmi = Repacked.text(bed.path("good.mural"), "mural.xmi");
    Path evil = bed.path("evil.mural");
    Repacked.replace(bed.path("good.mural"), "mural.xmi", xmi.replaceFirst("\\?>",
        "?><!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>"), evil);
    refusedByEveryVerb(evil, "evil.mural");
  }

  @ParameterizedTest
  @CsvSource({"sheets,out/sub", "cuts,out", "export,out", "new,gone/heron.mural", "new,.", "demo,out"})
  void aPlaceThatCannotBeWrittenIsRefused(String verb, String place) throws IOException {
    bed.file("out", "a file");
    Path brief = bed.brief();
    TreeMap<String, String> before = bed.content();

    Result result = verb.equals("demo") ? bed.run(verb, "--out", bed.path(place))
        : bed.run(verb, brief, "--out", bed.path(place));

    assertPlainRefusal(result, verb);
    assertEquals(before, bed.content());
  }

  @Test
  @Timeout(30)
  void aPipeIsRefusedAtOnce() throws Exception {
    Path mkfifo = Path.of("/usr/bin/mkfifo");
    assumeTrue(Files.isExecutable(mkfifo));
    Path pipe = Files.createDirectory(bed.path("in")).resolve("wall.json");
    assertEquals(0, new ProcessBuilder(mkfifo.toString(), pipe.toString()).start().waitFor());
    for (String verb : new String[] {"check", "pieces"}) {
      String said = assertPlainRefusal(bed.run(verb, pipe), verb);
      assertTrue(said.contains("wall.json: is a pipe or a device, not a file.\n  Save the mural"), said);
    }
    assertPlainRefusal(bed.run("new", bed.brief(), "--out", pipe), "new");
    assertFalse(Files.isRegularFile(pipe));
  }

  @Test
  void linksThatLeadNowhereAreRefused() throws IOException {
    Path round = Files.createSymbolicLink(bed.path("round.json"), bed.path("other.json"));
    Files.createSymbolicLink(bed.path("other.json"), round);
    Path lost = Files.createSymbolicLink(bed.path("lost.json"), bed.path("gone.json"));
    String said = assertPlainRefusal(bed.run("check", round), "check");
    assertTrue(said.contains("round.json: is a link that leads round in a circle."), said);
    said = assertPlainRefusal(bed.run("check", lost), "check");
    assertTrue(said.contains("lost.json: is a link to a file that is not there."), said);
    for (String verb : new String[] {"new", "sheets"}) {
      said = assertPlainRefusal(bed.run(verb, bed.brief(), "--out", round), verb);
      assertTrue(said.contains("a link that leads round in a circle."), said);
    }
  }

  @Test
  void theBriefIsNotWrittenOver() throws IOException {
    Path brief = bed.brief();
    Path link = Files.createSymbolicLink(bed.path("link.mural"), brief);
    TreeMap<String, String> before = bed.content();
    for (Path out : new Path[] {brief, link, folder.resolve("../" + folder.getFileName() + "/heron.json")}) {
      String said = assertPlainRefusal(bed.run("new", brief, "--out", out), "new");
      assertTrue(said.contains("over the file it is made from"), said);
    }
    assertPlainRefusal(bed.run("new", link, "--out", brief), "new");
    assertEquals(before, bed.content());
  }

  /** ESC [ is how a terminal takes orders (ECMA-48, 5.4); U+0085 and DEL are the control characters of ISO 6429. */
  @Test
  void whatATerminalWouldObeyIsSpelledOut() throws IOException {
    String evil = "a\\n\\u001b[2J\\u0085\\u007f";
    Path brief = bed.file("heron.json",
        CommandBed.BRIEF.replace("\"title\": \"Heron", "\"" + evil + "\": 1, \"title\": \"Heron"));
    String said = assertPlainRefusal(bed.run("check", brief), "check");
    assertTrue(said.contains("/" + evil + ": "), said);
    said = assertPlainRefusal(bed.run("check", "a\u001b[2J.json"), "check");
    assertTrue(said.contains("a\\u001b[2J.json: is not there"), said);
    said = assertPlainRefusal(bed.run("pa\u001b[2Jint"), "paint");
    assertTrue(said.contains("no verb 'pa\\u001b[2Jint'"), said);
  }

  private void refusedByEveryVerb(Path input, String named) throws IOException {
    Files.createDirectories(bed.path("old"));
    bed.file("old/heron.mural", "old mural");
    TreeMap<String, String> before = bed.content();
    for (String verb : new String[] {"check", "pieces"}) {
      assertTrue(assertPlainRefusal(bed.run(verb, input), verb).contains(named), () -> bed.run(verb, input).err());
    }
    assertPlainRefusal(bed.run("new", input, "--out", bed.path("old/heron.mural")), "new");
    for (String verb : new String[] {"sheets", "cuts", "export"}) {
      assertPlainRefusal(bed.run(verb, input, "--out", bed.path("old")), verb);
    }
    assertEquals(before, bed.content());
  }

  private static String assertPlainRefusal(Result result, String verb) {
    assertEquals(ExitCode.BAD_INPUT, result.code(), verb + ": " + result);
    assertEquals("", result.out(), verb);
    assertTrue(result.err().startsWith("muralbench: "), result.err());
    assertFalse(result.err().contains("Exception") || result.err().contains("\tat "), result.err());
    assertTrue(result.err().lines().count() == 2, "the problem, then the remedy: " + result.err());
    return result.err();
  }

  private Path archive(String name, String entry, String text) throws IOException {
    try (OutputStream out = Files.newOutputStream(bed.path(name)); ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry(entry));
      zip.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return bed.path(name);
  }
}
