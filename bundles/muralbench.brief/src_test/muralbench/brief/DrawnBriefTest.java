// SPDX-License-Identifier: EPL-2.0
package muralbench.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import muralbench.base.InputException;
import muralbench.model.PathOutline;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Briefs whose outlines are in drawings beside them. */
class DrawnBriefTest {
  private static final String TRIANGLE = String.join("\n", "0", "SECTION", "2", "ENTITIES", "0", "LWPOLYLINE", "8",
      "PANEL", "90", "3", "70", "1", "10", "0", "20", "0", "10", "96", "20", "0", "10", "0", "20", "48", "0", "CIRCLE",
      "8", "LAMP", "10", "20", "20", "20", "40", "2", "0", "ENDSEC", "0", "EOF", "");

  @TempDir
  Path folder;
  private Path job;

  @BeforeEach
  void drawings() throws Exception {
    job = Files.createDirectory(folder.resolve("job"));
    Files.writeString(job.resolve("wall.dxf"), TRIANGLE);
    Files.writeString(Files.createDirectory(job.resolve("cad")).resolve("wall.dxf"), TRIANGLE);
    Files.writeString(folder.resolve("outside.dxf"), TRIANGLE);
  }

  private PathOutline outline(String outline) throws Exception {
    Path brief = Files.writeString(job.resolve("wall.json"),
        Briefs.SHORT.replace("{ \"rectangle\": [0, 36, 72, 48] }", outline));
    return (PathOutline) BriefReader.read(brief).getPanels().get(0).getOutline();
  }

  @ParameterizedTest
  @ValueSource(strings = {"{ \"dxf\": \"wall.dxf\", \"layer\": \"PANEL\" }",
      "{ \"layer\": \"panel\", \"dxf\": \"./cad/wall.dxf\" }"})
  void outlineOfALayerInTheUnitsOfTheBrief(String outline) throws Exception {
    // 96 in = 2438.4 mm, 48 in = 1219.2 mm.
    assertEquals("M 0 0 L 2438.4 0 L 0 1219.2 Z", outline(outline).getData());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "\"wall.dxf\"|/dxf|2 closed lines are drawn, on these layers: LAMP, PANEL", "\"lost.dxf\"|/dxf|no drawing",
    "\"../outside.dxf\"|/dxf|not the name of a file in the folder", "\"cad/../wall.dxf\"|/dxf|not the name of a file",
    "\"/etc/hostname\"|/dxf|not the name of a file", "\"C:wall.dxf\"|/dxf|not the name of a file",
    "\"cad\\\\wall.dxf\"|/dxf|not the name of a file", "\"link.dxf\"|/dxf|not the name of a file",
    "\"cad\"|/dxf|cannot be read", "\"wall.json\"|/dxf|line 1: here a DXF file has",
    "7|/dxf|a number instead of a text",
    "\"\"|/dxf|there is no text", "\"wall.dxf\", \"layer\": 0|/layer|a number instead of",
    "\"wall.dxf\", \"circle\": [0, 0, 1]|~|Give exactly one of rectangle, polygon, circle, path, measured, level"})
  void refusesWhatCannotBeUsed(String drawing, String pointer, String message) throws Exception {
    Files.createSymbolicLink(job.resolve("link.dxf"), folder.resolve("outside.dxf"));
    InputException e = assertThrows(InputException.class, () -> outline("{ \"dxf\": " + drawing + " }"));
    assertEquals("/panels/0/outline" + pointer.replace("~", ""), e.place(), e.getMessage());
    assertTrue(e.getMessage().contains(message), e.getMessage());
  }

  @Test
  void outlineOfAnSvgPath() throws Exception {
    // An arch of 1200 by 900 mm with a half circle on top, drawn in 10 mm to the unit below a margin of 5 units.
    Files.writeString(job.resolve("wall.svg"), """
        <svg xmlns="http://www.w3.org/2000/svg" width="1300mm" height="1600mm" viewBox="0 0 130 160">
          <g transform="translate(5,-5)"><path id="edge" d="M0 160h120V70a60 60 0 0 0-120 0Z"/></g>
          <path id="lamp" d="M1 1h1v1z"/></svg>""");
    assertEquals("M 50 50 h 1200 V 950 a 600 600 0 0 1 -1200 0 Z",
        outline("{ \"svg\": \"wall.svg\", \"id\": \"edge\" }").getData());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"\"svg\": \"a.svg\", \"layer\": \"A\"|/dxf|\"dxf\" is missing",
    "\"id\": \"a\"|/svg|\"svg\" is missing", "\"svg\": \"a.svg\", \"dxf\": \"a.dxf\"|~|is not known",
    "\"svg\": \"a.svg\"|/svg|no drawing", "\"svg\": \"bad.svg\"|/svg|cannot be read at character 7"})
  void refusesSvgThatCannotBeUsed(String drawing, String pointer, String message) throws Exception {
    Files.writeString(job.resolve("bad.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><path d='M 0 0 X'/></svg>");
    InputException e = assertThrows(InputException.class, () -> outline("{ " + drawing + " }"));
    assertTrue(e.place().startsWith("/panels/0/outline" + pointer.replace("~", "")), e.getMessage());
    assertTrue(e.getMessage().contains(message), e.getMessage());
  }

  @Test
  void aLayerNeedsADrawing() {
    InputException e = assertThrows(InputException.class, () -> outline("{ \"layer\": \"PANEL\" }"));
    assertEquals("/panels/0/outline/dxf", e.place());
    assertTrue(e.remedy().contains("\"dxf\": \"wall.dxf\""), e.getMessage());
  }

  @Test
  void hugeDrawing() throws Exception {
    Files.write(job.resolve("huge.dxf"), new byte[(16 << 20) + 1]);
    InputException e = assertThrows(InputException.class, () -> outline("{ \"dxf\": \"huge.dxf\" }"));
    assertTrue(e.problem().contains("larger than 16 MB"), e.getMessage());
  }

  @Test
  void aBriefThatIsNoFileHasNoDrawings() {
    InputException e = assertThrows(InputException.class, () -> BriefReader.readText(
        Briefs.SHORT.replace("\"rectangle\": [0, 36, 72, 48]", "\"dxf\": \"wall.dxf\"")));
    assertEquals("/panels/0/outline/dxf", e.place());
    assertTrue(e.remedy().contains("Save the brief as a file"), e.getMessage());
  }
}
