// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import muralbench.base.Progress;
import muralbench.base.file.OutputFolder;
import muralbench.base.length.LengthUnit;
import muralbench.export.ForeignTool;
import muralbench.export.SampleMural;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Drawings read back with the JDK's XML parser, checked against the DTD of SVG 1.1 and rendered by librsvg. */
class SvgExporterTest {
  private static final Path DTD =
      Path.of("/usr/share/xml/w3c-sgml-lib/schema/dtd/REC-SVG11-20110816/svg11.dtd");
  private static final double BOTTOM = SampleMural.CORNER.y();

  @TempDir
  Path folder;

  @Test
  void isAsLargeAsThePanelInMillimetres() throws Exception {
    Element svg = draw(SampleMural.panel("A")).getDocumentElement();
    assertEquals("566.725mm", svg.getAttribute("width"));
    assertEquals("463.55mm", svg.getAttribute("height"));
    assertEquals("0 -1377.95 566.725 463.55", svg.getAttribute("viewBox"));
  }

  @Test
  void everyPieceIsAPathWithItsKeyAsIdAndItsKindAsClass() throws Exception {
    Map<String, String> kinds = new HashMap<>();
    for (Element path : paths(draw(SampleMural.panel("A")), "pieces")) {
      kinds.put(path.getAttribute("id"), path.getAttribute("class"));
    }
    assertEquals(12, kinds.size());
    assertEquals("whole", kinds.get("A-01-01"));
    assertEquals("notched", kinds.get("A-01-03"));
    assertEquals("pierced", kinds.get("A-02-02"));
    assertEquals("curved", kinds.get("A-03-01"));
  }

  @Test
  void aRoundedCornerIsAnArcTurnedOver() throws Exception {
    String data = piece("A-03-01").getAttribute("d");
    // On the wall the arc runs from (100, top) counter-clockwise to (0, top - 100); with y down that is sweep flag 0.
    assertTrue(data.endsWith("L100 -1377.95A100 100 0 0 0 0 -1277.95Z"), data);
  }

  @Test
  void aHoleIsDrawnInQuartersTheOtherWayRound() throws Exception {
    String data = piece("A-02-02").getAttribute("d");
    assertEquals(4, data.split("A20 20 0 0 1 ", -1).length - 1, data);
  }

  @Test
  void openingsCarryTheirNames() throws Exception {
    List<Element> openings = paths(draw(SampleMural.panel("A")), "openings");
    assertEquals(List.of("A1 pipe", "A2 outlet"),
        openings.stream().map(path -> path.getTextContent().strip()).toList());
  }

  @Test
  void theKeyOfEveryPieceStandsInIt() throws Exception {
    Document drawing = draw(SampleMural.panel("A"));
    NodeList texts = drawing.getElementsByTagName("text");
    assertEquals(12, texts.getLength());
    Element pierced = (Element) texts.item(5);
    assertEquals("A-02-02", pierced.getTextContent());
    double fromHole = Math.hypot(Double.parseDouble(pierced.getAttribute("x")) - 231.775,
        Double.parseDouble(pierced.getAttribute("y")) + BOTTOM + 231.775);
    assertTrue(fromHole > 20, "key in the hole");
  }

  @Test
  void hostileTextsAreKeptOutOfTheMarkup() throws Exception {
    String title = "<script>\u0000\u0007\u001b\ufffe&\"'" + "]]>\ud800x";
    Document drawing = draw(SampleMural.panel("<&>\"", title));
    assertEquals("<&>\" <script>&\"']]>x", drawing.getElementsByTagName("title").item(0).getTextContent());
    assertEquals(0, drawing.getElementsByTagName("script").getLength());
  }

  @Test
  void panelsWhoseIdsFallTogetherGetFilesOfTheirOwn() throws Exception {
    export(SampleMural.of(LengthUnit.INCH, SampleMural.panel("a/1"), SampleMural.panel("A 1")));
    try (var files = Files.list(folder)) {
      assertEquals(List.of("panel-A_1-2.svg", "panel-a_1.svg"),
          files.map(file -> file.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void isValidByTheDtdOfSvg11() throws Exception {
    Assumptions.assumeTrue(Files.exists(DTD), "the DTD of SVG 1.1 is not installed");
    for (String id : List.of("A", "1", "Küche & <Bad>", "_x41_")) {
      draw(SampleMural.panel(id));
      ForeignTool.Result result =
          ForeignTool.run("xmllint", "--nonet", "--noout", "--dtdvalid", DTD.toString(), only().toString());
      assertEquals(0, result.exit(), result.text());
      Files.delete(only());
    }
  }

  @Test
  void librsvgDrawsCutsHolesAndOpeningsWhereTheyAre() throws Exception {
    draw(SampleMural.panel("A"));
    Path png = folder.resolve("panel.png");
    ForeignTool.Result result = ForeignTool.run("rsvg-convert", "-w", "567", "-b", "#ff0000", "-o", png.toString(),
        only().toString());
    assertEquals(0, result.exit(), result.text());
    BufferedImage image = ImageIO.read(png.toFile());
    double scale = 567 / 566.725;
    assertEquals(0xffffff, colour(image, scale, 50, 50), "a whole piece");
    assertEquals(0xe8e8e8, colour(image, scale, 520, 30), "a trimmed piece");
    assertEquals(0xc8c8c8, colour(image, scale, 60, 350), "a curved piece");
    assertEquals(0xffffff, colour(image, scale, 232, 232), "the outline's white shows through the hole");
    assertEquals(0xff0000, colour(image, scale, 10, 455), "nothing is drawn beyond the rounded corner");
  }

  private static int colour(BufferedImage image, double scale, double x, double up) {
    return image.getRGB((int) (x * scale), image.getHeight() - 1 - (int) (up * scale)) & 0xffffff;
  }

  private Element piece(String key) throws Exception {
    return paths(draw(SampleMural.panel("A")), "pieces").stream()
        .filter(path -> path.getAttribute("id").equals(key)).findFirst().orElseThrow();
  }

  private static List<Element> paths(Document drawing, String group) {
    List<Element> found = new ArrayList<>();
    NodeList paths = drawing.getElementsByTagName("path");
    for (int i = 0; i < paths.getLength(); i++) {
      if (((Element) paths.item(i).getParentNode()).getAttribute("class").equals(group)) {
        found.add((Element) paths.item(i));
      }
    }
    return found;
  }

  private Document draw(PanelSetOut panel) throws Exception {
    export(SampleMural.of(LengthUnit.INCH, panel));
    return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(only().toFile());
  }

  private Path only() throws Exception {
    try (var files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".svg")).findFirst().orElseThrow();
    }
  }

  private void export(MuralSetOut setOut) throws Exception {
    try (OutputFolder output = OutputFolder.open(folder)) {
      new SvgExporter().export(SampleMural.context(setOut), output, Progress.NONE);
      output.commit();
    }
  }
}
