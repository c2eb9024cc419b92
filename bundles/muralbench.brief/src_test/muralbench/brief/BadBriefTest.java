// SPDX-License-Identifier: EPL-2.0
package muralbench.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import muralbench.base.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BadBriefTest {
  /** What is put in place of what in the full brief; the pointer and a part of the message that answer it. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
    // unknown and missing fields
    "\"client\"|\"weather\"|/weather|\"weather\" is not known. Known here are format, version, title",
    "\"body\"|\"glaze/y\"|/tiles/0/glaze~1y|\"glaze/y\" is not known",
    "\"mounting\"|\"hung\"|/panels/0/hung|\"hung\" is not known",
    "\"exposure\"|\"weather\"|/site/weather|\"weather\" is not known. Known here are exposure, temperatureSwing;",
    "\"title\": \"Harbour wall\",|  |/title|\"title\" is missing. Add it, for example as \"title\": \"Harbour wall\"",
    "\"joint\": \"1/8\",|  |/panels/0/joint|\"joint\" is missing. Add it, for example as \"joint\": \"1/8\"",
    // misspelt fields
    "\"joint\"|\"joints\"|/panels/0/joints|\"joint\" is missing, and \"joints\" is not known. Did you mean \"joint\"?",
    "\"title\": \"Harbour|\"titel\": \"Harbour|/titel|\"title\" is missing, and \"titel\" is not known",
    "\"revision\"|\"Revison\"|/Revison|\"Revison\" is not known. Did you mean \"revision\"? Known here are format,",
    "\"rotation\"|\"rotate\"|/panels/0/bond/rotate|Did you mean \"rotation\"?",
    // wrong types and words
    "\"Harbour wall\"|7|/title|a number instead of a text",
    "\"Harbour wall\"|null|/title|null instead of a text",
    "\"Harbour wall\"|\"\"|/title|there is no text",
    "\"Harbour wall\"|\"a\\u0007\"|/title|cannot be used here. Write it as one line",
    "\"Harbour wall\"|\"\\ud83c\"|/title|Write it as one line",
    "\"Harbour wall\"|\"\\udf0a!\"|/title|Write it as one line",
    "\"Harbour wall\"|\"Harbour wall\\n\"|/title|Write it as one line",
    "\"Harbour wall\"|\"Harbour \\u0085 wall\"|/title|Write it as one line",
    "\"units\": \"in\"|\"units\": \"cm\"|/units|\"cm\" is not known. Use one of \"in\", \"mm\"",
    "exterior-frost|polar|/site/exposure|\"polar\" is not known",
    "\"version\": 1|\"version\": 2|/version|version 2, written for a newer Muralbench; this one reads version 1. "
        + "Open it with a newer Muralbench, or use \"version\": 1",
    "\"version\": 1|\"version\": 0|/version|0 is not known. Use 1.",
    "muralbench-brief|brief|/format|Use \"muralbench-brief\"",
    "\"joint\": \"1/8\"|\"joint\": true|/panels/0/joint|true or false instead of a number or a text",
    "[12, 36.5]|\"left\"|/panels/0/origin|Use \"balanced\", or [x, y]",
    "[12, 36.5]|[12]|/panels/0/origin|at least 2. Use \"balanced\", or [x, y]",
    "[12, 36.5]|[12, 36, 1]|/panels/0/origin|at most 2. Use \"balanced\", or [x, y]",
    "[12, 36.5]|{}|/panels/0/origin|there is nothing in it. Give exactly one of focus, gridOf, levelWith",
    "[12, 36.5]|{ \"gridOf\": \"B\", \"levelWith\": \"B\" }|/panels/0/origin|more than one form. Give exactly one",
    "[12, 36.5]|{ \"gridOf\": \"B\" }|/panels/0/origin/gridOf|there is no other panel",
    "\"joint\": \"1/8\"|\"repeats\": \"A\"|/panels/0/at|\"at\" is missing. Add it, for example as \"at\": [84,36]",
    "\"joint\": \"1/8\"|\"repeats\": \"A\", \"at\": [1, 2]|/panels/0/tile|\"tile\" is given, and the panel repeats",
    "\"joint\": \"1/8\"|\"joint\": 0, \"at\": [1, 2]|/panels/0/repeats|\"repeats\" is missing. Add it",
    "\"joint\": \"1/8\"|\"joint\": 0, \"mirrored\": true|/panels/0/repeats|\"repeats\" is missing. Add it",
    "[12, 36.5]|{ \"focus\": [1] }|/panels/0/origin/focus|1 entries instead of at least 2",
    "[12, 36.5]|{ \"focus\": [1, 2], \"centre\": 3 }|/panels/0/origin/centre|\"centre\" is not known",
    "[0, 36, 72, 48]|[0, 36, 72]|/panels/0/outline/rectangle|3 entries instead of at least 4",
    "\"rectangle\": [0, 36, 72, 48]|  |/panels/0/outline|exactly one of rectangle, polygon, circle, path, measured",
    "48] }|48], \"circle\": [1, 1, 1] }|/panels/0/outline|more than one form",
    "\"rectangle\": [0|\"square\": [0|/panels/0/outline/square|\"square\" is not known",
    "[0, 36, 72, 48]|[0, 36, [72], 48]|/panels/0/outline/rectangle/2|a list [...] instead of a number or a text",
    "\"size\": \"2\"|\"size\": 2|/panels/0/bond/settings/size|a number instead of a text",
    "\"size\": \"2\"|\" size\": \"2\"|/panels/0/bond/settings|Name a setting with",
    "\"offset\": 0.25|\"offset\": \"half\"|/panels/0/bond/offset|a fraction such as \"1/3\"",
    "\"offset\": 0.25|\"offset\": \"1/0\"|/panels/0/bond/offset|a fraction such as \"1/3\"",
    "\"offset\": 0.25|\"offset\": \"3/2\"|/panels/0/bond/offset|more than a whole module",
    "\"offset\": 0.25|\"offset\": 2|/panels/0/bond/offset|2 is above 1",
    "\"rotation\": 45|\"rotation\": 400|/panels/0/bond/rotation|the rotation 400 is above 360",
    "\"kind\": \"outlet\"|\"kind\": \"Outlet A\"|/panels/0/openings/0/kind|one lower-case word",
    "\"id\": \"A\"|\"id\": \"A-1\"|/panels/0/id|letters A to Z, digits and _",
    "\"id\": \"A\"|\"id\": \"A 1\"|/panels/0/id|letters A to Z, digits and _",
    "\"id\": \"A\"|\"id\": \"\"|/panels/0/id|letters A to Z, digits and _",
    "\"id\": \"A1\"|\"id\": \" A1\"|/panels/0/openings/0/id|without blanks at the ends",
    "\"joint\": \"1/8\"|\"joint\": \"1/8\", \"movementJoints\": \"many\"|/panels/0/movementJoints|Use \"by-rule\", or a list",
    "\"joint\": \"1/8\"|\"joint\": \"1/8\", \"movementJoints\": [{}]|/panels/0/movementJoints/0/axis|\"axis\" is missing",
    // lengths
    "\"joint\": \"1/8\"|\"joint\": \"thin\"|/panels/0/joint|\"thin\" is no length. Write it like 5 ft 3-1/2 in. "
        + "A bare number is taken as inches.",
    "\"joint\": \"1/8\"|\"joint\": \"1/8 px\"|/panels/0/joint|\"px\" in \"1/8 px\" is no unit known here",
    "\"joint\": \"1/8\"|\"joint\": \"0,125\"|/panels/0/joint|decimal mark is a point",
    "\"joint\": \"1/8\"|\"joint\": \"NaN\"|/panels/0/joint|\"NaN\" is not a number. Write it like",
    "\"joint\": \"1/8\"|\"joint\": -0.125|/panels/0/joint|the joint -0.125 is below 0. Give 0 or more",
    "\"joint\": \"1/8\"|\"joint\": \"-1/8\"|/panels/0/joint|the joint \"-1/8\" is below 0. Give 0",
    "\"width\": 6|\"width\": 0|/tiles/0/width|the width 0 is not above 0. Give it as a length above 0",
    "\"width\": 6|\"width\": -6|/tiles/0/width|the width -6 is not above 0",
    "\"width\": 6|\"width\": \"-6 in\"|/tiles/0/width|the width \"-6 in\" is not above 0",
    "\"width\": 6|\"width\": 1e300|/tiles/0/width|1E+300 is beyond anything",
    "\"width\": 6|\"width\": 1e999999999|/tiles/0/width|1E+999999999 is beyond anything",
    "\"width\": 6|\"width\": 1e-999999999|/tiles/0/width|1E-999999999 is beyond anything",
    "\"width\": 6|\"width\": 1e2147483648|/tiles/0/width|1e2147483648 is beyond anything",
    "\"width\": 6|\"width\": -1e-2147483648|/tiles/0/width|-1e-2147483648 is beyond anything",
    "\"width\": 6|\"width\": 1.5E+99999999999999999999|/tiles/0/width|1.5E+99999999999999999999 is beyond anything",
    "[12, 36.5]|[12, 1e2147483648]|/panels/0/origin/1|1e2147483648 is beyond anything",
    "\"width\": 6|\"width\": 40000|/tiles/0/width|40000 is over 1 km",
    "\"width\": 6|\"width\": \"1001 m\"|/tiles/0/width|\"1001 m\" is over 1 km; no length on a wall is",
    "[0, 36, 72, 48]|[0, 36, 0, 48]|/panels/0/outline/rectangle/2|the width 0 is not above 0",
    "[0, 36, 72, 48]|[0, 36, 72, -48]|/panels/0/outline/rectangle/3|the height -48 is not above 0",
    "\"rectangle\": [0, 36, 72, 48]|\"circle\": [0, 36, -1]|/panels/0/outline/circle/2|the radius -1 is not above 0",
    "\"1/32\"|-1|/tiles/0/facialVariation|the facial variation -1 is below 0",
    "[0, 36, 72, 48]|[0, -40000, 72, 48]|/panels/0/outline/rectangle/1|over 1 km",
    "\"waterAbsorption\": 0.3|\"waterAbsorption\": 101|/tiles/0/waterAbsorption|the water absorption 101 is above 100",
    "\"width\": 6|\"width\": \"1 ft -3 in\"|/tiles/0/width|\"1 ft -3 in\" is no length",
    "\"width\": 6|\"width\": \"5 Mm\"|/tiles/0/width|\"Mm\" in \"5 Mm\" is no unit known here",
    // ids, tiles, joints
    "\"joint\": \"1/8\"|\"joint\": \"160 mm\"|/panels/0/joint|the joint of 6.299 in is as wide",
    "\"client\"|\"a\\n\\u001b[31m\\u0085\"|/a\\n\\u001b[31m\\u0085|\"a\\n\\u001b[31m\\u0085\" is not known",
    "\"tile\": \"T6\"|\"tile\": \"T9\"|/panels/0/tile|there is no tile \"T9\". Use one of T6",
    "\"id\": \"A1\"|\"id\": \"A\"|/panels/0/openings/0/id|\"A\" is used before, by /panels/0/id",
    "\"joint\": \"1/8\"|\"joint\": 6|/panels/0/joint|the joint of 6 in is as wide as the tile, which is 6 in by 6 in",
    "\"joint\": \"1/8\"|\"joint\": \"7 in\"|/panels/0/joint|Make the joint narrower",
    "\"rectangle\": [0, 36, 72, 48]|\"path\": \"M 0 0 X\"|/panels/0/outline/path|at character 7: a command letter",
    "\"rectangle\": [0, 36, 72, 48]|\"path\": \"\"|/panels/0/outline/path|there is no text",
    // walls measured on site
    "\"rectangle\": [0, 36, 72, 48]|\"measured\": {}|/panels/0/outline/measured/at|\"at\" is missing",
    "\"rectangle\": [0, 36, 72, 48]|\"measured\": { \"at\": [0, 0], \"bottom\": 4, \"right\": 3, \"top\": 4, "
        + "\"left\": 3, \"rising\": \"wide\", \"falling\": 5 }|/panels/0/outline/measured/rising|wide",
    "\"rectangle\": [0, 36, 72, 48]|\"measured\": { \"at\": [0, 0], \"bottom\": 4, \"right\": 3, \"top\": 4, "
        + "\"left\": 3, \"rising\": 5, \"falling\": 5, \"rise\": \"4 in\" }|/panels/0/outline/measured/rise|as long as",
    "\"rectangle\": [0, 36, 72, 48]|\"measured\": { \"at\": [0, 0], \"bottom\": 4, \"right\": 3, \"top\": 4, "
        + "\"left\": 3, \"rising\": 5, \"falling\": 5, \"accuracy\": 0 }|/panels/0/outline/measured/accuracy|"
        + "the accuracy 0 is not above 0",
    "\"rectangle\": [0, 36, 72, 48]|\"levelLine\": { \"at\": [0, 0], \"stations\": [[0, 1, 2]] }|"
        + "/panels/0/outline/levelLine/stations|1 entries instead of at least 2",
    "\"rectangle\": [0, 36, 72, 48]|\"levelLine\": { \"at\": [0, 0], \"stations\": [[5, 1, 2], [5, 1, 2]] }|"
        + "/panels/0/outline/levelLine/stations/1/0|not more than that of the station before",
    "\"rectangle\": [0, 36, 72, 48]|\"levelLine\": { \"at\": [0, 0], \"stations\": [[5, 1, -1], [6, 1, 2]] }|"
        + "/panels/0/outline/levelLine/stations/0|the upper edge is not above",
    // strict JSON
    "\"revision\": \"C\"|\"title\": \"C\"|/title|\"title\" is given twice",
    "\"body\"|\"height\"|/tiles/0/height|\"height\" is given twice",
    "\"width\": 6|\"width\": NaN|~~|not JSON at line 4",
    "\"width\": 6|\"width\": 06|~~|not JSON at line 4",
    "\"width\": 6|\"width\": +6|~~|not JSON at line 4",
    "\"units\": \"in\",|\"units\": \"in\" // inches|~~|not JSON at line"})
  void namesTheFieldAndTheRemedy(String what, String with, String pointer, String message) {
    assertTrue(Briefs.FULL.contains(what), what);
    String brief = Briefs.FULL.replaceFirst(Pattern.quote(what),
        Matcher.quoteReplacement(with == null ? "" : with));
    InputException e = assertThrows(InputException.class, () -> BriefReader.readText(brief));
    assertEquals(pointer, e.place(), e.getMessage());
    assertTrue(e.getMessage().contains(message), e.getMessage());
    assertTrue(e.remedy().endsWith(".") && !e.problem().endsWith("."), e.getMessage());
    assertFalse(e.getMessage().contains("MISSING") || e.getMessage().contains("null:"), e.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"A,/panels/1/id,\"A\" is used before", "a,/panels/1/id,only in capital letters"})
  void panelIdsAreUnique(String id, String pointer, String message) {
    String panel = Briefs.SHORT.substring(Briefs.SHORT.indexOf("{ \"id\": \"A\""), Briefs.SHORT.lastIndexOf(" ]"));
    String brief = Briefs.SHORT.replace(panel, panel + ", " + panel.replace("\"A\"", "\"" + id + "\""));
    assertRefused(brief, pointer, message);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
    "\"repeats\": \"C\", \"at\": [1, 2]|/panels/1/repeats|there is no panel \"C\". Use one of A, or add",
    "\"repeats\": \"B\", \"at\": [1, 2]|/panels/1/repeats|the panel \"B\" cannot take it from itself",
    "\"repeat\": \"A\", \"at\": [1, 2]|/panels/1/repeat|Did you mean \"repeats\"?",
    "\"repeats\": \"A\", \"at\": [1]|/panels/1/at|1 entries instead of at least 2",
    "\"repeats\": \"A\", \"at\": [1, 2], \"mirror\": true|/panels/1/mirror|Did you mean \"mirrored\"?",
    "\"repeats\": \"A\", \"at\": [1, 2], \"joint\": 1|/panels/1/joint|Take the field out, or \"repeats\"",
    "\"repeats\": \"A\", \"at\": [1, 2], \"mirrored\": 1|/panels/1/mirrored|a number instead of true or false",
    "\"repeats\": \"A 1\", \"at\": [1, 2]|/panels/1/repeats|letters A to Z"})
  void aPanelThatRepeatsAnother(String fields, String pointer, String message) {
    String brief = Briefs.SHORT.substring(0, Briefs.SHORT.lastIndexOf(" ]"));
    assertRefused(brief + ", { \"id\": \"B\", " + fields + " } ] }", pointer, message);
  }

  @Test
  void tileIdsAreUnique() {
    String tile = "{ \"id\": \"T6\", \"width\": 6, \"height\": 6 }";
    assertRefused(Briefs.SHORT.replace(tile, tile + ", " + tile), "/tiles/1/id", "\"T6\" is used before");
  }

  @Test
  void nothingButPanelsIsNotEnough() {
    assertRefused(Briefs.SHORT.replaceAll("\"panels\": .*", "\"panels\": [] }"), "/panels", "at least 1");
    assertRefused("[]", "",
        "a list [...] instead of an object {...}. A brief is one object in braces that starts with");
    assertRefused("null", "", "null instead of an object {...}. A brief is");
    assertRefused("7", "", "a number instead of an object {...}");
  }

  @Test
  void firstProblemInReadingOrderIsTold() {
    String brief = Briefs.FULL.replace("\"kind\": \"grid\"", "\"kind\": 1").replace("\"width\": 6", "\"width\": -1");
    assertRefused(brief, "/tiles/0/width", "the width -1 is not above 0");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  \n "})
  void emptyText(String json) {
    assertRefused(json, "", "the brief is empty. Write at least format");
  }

  @Test
  void truncatedAnywhere() {
    for (int length = 1; length < Briefs.SHORT.lastIndexOf('}'); length += 3) {
      String start = Briefs.SHORT.substring(0, length);
      InputException e = assertThrows(InputException.class, () -> BriefReader.readText(start));
      assertTrue(e.problem().contains("stops in the middle") || e.problem().contains("not JSON"), e.getMessage());
    }
  }

  @Test
  void textAfterTheEnd() {
    assertRefused(Briefs.SHORT + "{}", "", "after the end");
    assertRefused(Briefs.SHORT + "]", "", "not JSON");
  }

  @ParameterizedTest
  @ValueSource(strings = {"[", "{\"a\":"})
  void deepNesting(String bracket) {
    assertRefused(bracket.repeat(1_000_000), "", "nested more than 32 deep");
    String brief = Briefs.FULL.replace("\"Harbour wall\"", "[".repeat(2000) + "]".repeat(2000));
    assertRefused(brief, "", "nested more than 32 deep");
  }

  @Test
  void numberOfAThousandDigits() {
    assertRefused(Briefs.SHORT.replace("0.125", "1".repeat(1000)), "", "far too long, at line");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0e2147483648", "1e2147483648"})
  void numberThatCannotBeHeldBeforeWhatIsNotJson(String number) {
    assertRefused(Briefs.SHORT.replace("0.125", number), "/panels/0/joint", number + " is beyond anything");
    assertRefused(number, "", number + " is beyond anything");
  }

  @Test
  void longNameIsNotEchoedWithoutEnd() {
    assertRefused(Briefs.SHORT.replace("\"A\"", "\"" + "x".repeat(100_000) + "\""), "/panels/0/id", "…");
  }

  @Test
  void missingFile(@TempDir Path folder) {
    assertFileRefused(folder.resolve("lost.json"), "no such file");
  }

  @Test
  void folderInsteadOfFile(@TempDir Path folder) {
    assertFileRefused(folder, "this is a folder");
  }

  @Test
  void notUtf8(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("latin.json");
    Files.write(file, Briefs.SHORT.replace("Harbour", "Höhe").getBytes(StandardCharsets.ISO_8859_1));
    assertFileRefused(file, "not in UTF-8");
  }

  /** A PDF starts with a line of bytes that are no text, so that programs see it is binary (ISO 32000-2, 7.5.2). */
  @ParameterizedTest
  @ValueSource(strings = {"%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n", "\u0089PNG\r\n\u001a\n", "MZ\u0000\u0003"})
  void fileThatIsNoText(String start, @TempDir Path folder) throws Exception {
    Path file = Files.write(folder.resolve("wall.pdf"), start.getBytes(StandardCharsets.ISO_8859_1));
    assertFileRefused(file, "this is not a brief. A brief is plain text in JSON");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " \n", "\uFEFF"})
  void emptyFile(String content, @TempDir Path folder) throws Exception {
    assertFileRefused(Files.writeString(folder.resolve("empty.json"), content), "the file is empty");
  }

  @Test
  void whateverTheUnitsAreABareNumberIsExplained() {
    String metric = Briefs.SHORT.replace("\"title\"", "\"units\": \"mm\", \"title\"").replace("0.125", "\"thin\"");
    assertRefused(metric, "/panels/0/joint", "A bare number is taken as millimetres.");
  }

  @Test
  void theVersionIsToldBeforeWhatItMayHaveChanged() {
    String newer = Briefs.SHORT.replace("\"version\": 1", "\"version\": 2").replace("\"title\"", "\"name\"");
    assertRefused(newer, "/version", "written for a newer Muralbench");
  }

  @Test
  void hugeFile(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("huge.json");
    try (var channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      // A hole of 4 GB with one byte at its end.
      channel.write(ByteBuffer.wrap(new byte[1]), 4L << 30);
    }
    assertTimeoutPreemptively(Duration.ofSeconds(60), () -> assertFileRefused(file, "larger than 16 MB"));
  }

  private static void assertFileRefused(Path file, String message) {
    InputException e = assertThrows(InputException.class, () -> BriefReader.read(file));
    assertEquals(file.toString(), e.place());
    assertTrue(e.getMessage().contains(message), e.getMessage());
  }

  private static void assertRefused(String json, String pointer, String message) {
    InputException e = assertThrows(InputException.class, () -> BriefReader.readText(json));
    assertEquals(pointer, e.place(), e.getMessage());
    assertTrue(e.getMessage().contains(message), e.getMessage());
    assertTrue(e.getMessage().length() < 1000, e.getMessage());
  }
}
