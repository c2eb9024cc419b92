// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import muralbench.base.length.LengthUnit;
import muralbench.export.ExportContext;
import muralbench.export.ForeignTool;
import muralbench.export.Paper;
import muralbench.export.SampleMural;
import muralbench.export.internal.pdf.ReadSheet;
import muralbench.export.internal.pdf.ReadSheet.Text;
import muralbench.setout.MuralSetOut;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.cut.CutList;
import muralbench.setout.geometry.Box;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Printed cutting lists read back: texts with their places, lines with their lengths. */
class CutSheetsTest {
  private final MuralSetOut mural = SampleMural.inches();
  private final List<CutGroup> groups = CutList.of(mural);

  @TempDir
  Path folder;

  @Test
  void everyKeyOfACutStandsOnceAndNoOther() throws Exception {
    List<String> keys = groups.stream().flatMap(group -> group.keys().stream()).sorted().toList();
    List<String> printed = texts(pdf(groups, Paper.LETTER)).stream().map(Text::text)
        .filter(text -> text.matches("A-\\d\\d-\\d\\d")).sorted().toList();
    assertEquals(keys, printed);
  }

  @Test
  void popplerFindsEveryKeyOnceToo() throws Exception {
    Path file = Files.write(folder.resolve("list.pdf"), pdf(groups, Paper.A4));
    List<String> words = List.of(ForeignTool.run("pdftotext", "-layout", file.toString(), "-").text().split("\\s+"));
    for (CutGroup group : groups) {
      group.keys().forEach(key -> assertEquals(1, Collections.frequency(words, key), key));
    }
  }

  @Test
  void aNotchIsMeasuredFromTheFactoryEdges() throws Exception {
    // The notch is 60 mm by 40 mm. Turned by a half with its whole side below, it starts 92.4 mm (3.638 in) from the
    // left and 112.4 mm (4.425 in) from below; the reader parts texts that are printed upwards.
    String texts = String.join("", texts(pdf(groups.subList(0, 1), Paper.LETTER)).stream().map(Text::text).toList());
    assertTrue(texts.contains("Notched: a corner points inwards"));
    assertTrue(texts.contains("3-5/8") && texts.contains("4-7/16"), texts);
  }

  @Test
  void aDrilledHoleIsGivenByDiameterAndCentre() throws Exception {
    assertTrue(all(pdf(groups, Paper.LETTER)).contains("Hole: diameter 1-9/16, centre 3 from left, 3 from below"));
  }

  @Test
  void aCircularEdgeIsGivenByItsRadius() throws Exception {
    assertTrue(all(pdf(groups, Paper.LETTER)).contains("Curve a: radius 3-15/16"));
  }

  @Test
  void thePieceIsDrawnToTheScaleItNames() throws Exception {
    byte[] pdf = pdf(groups.subList(1, 2), Paper.LETTER);
    assertTrue(all(pdf).contains("drawn 1:3"));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertTrue(ReadSheet.paths(document.getPage(0)).stream().filter(path -> !path.filled())
          .anyMatch(path -> isSized(path, SampleMural.TILE / 3, SampleMural.TRIMMED / 3)));
    }
  }

  private static boolean isSized(ReadSheet.Path path, double width, double height) {
    Box box = path.points().stream().map(p -> Box.of(p, p)).reduce(Box::and).orElseThrow();
    return Math.abs(box.width() - width) < 0.01 && Math.abs(box.height() - height) < 0.01;
  }

  @Test
  void theCheckLineMeasuresAHundredMillimetres() throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf(groups, Paper.A4))) {
      assertTrue(ReadSheet.paths(document.getPage(0)).stream().anyMatch(path -> isSized(path, 100, 0)));
    }
  }

  @ParameterizedTest
  @EnumSource
  void noTextCoversAnotherOrLeavesTheSheet(Paper paper) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf(groups, paper))) {
      Box sheet = new Box(0, 0, paper.width(), paper.height()).grown(-5);
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        List<Text> texts = ReadSheet.texts(document, page);
        for (int i = 0; i < texts.size(); i++) {
          Text text = texts.get(i);
          assertTrue(sheet.holds(text.box()), text.toString());
          texts.subList(i + 1, texts.size()).forEach(other -> assertFalse(
              text.box().grown(-0.05).meets(other.box().grown(-0.05)), () -> text + " and " + other));
        }
      }
    }
  }

  @Test
  void moreKeysThanASheetHoldsGoOn() throws Exception {
    List<String> keys = IntStream.range(1000, 6000).mapToObj(i -> "A-01-" + i).toList();
    CutGroup group = groups.get(1);
    CutGroup many = new CutGroup(1, group.kind(), group.tile(), group.area(), group.face(), group.outline(),
        group.holes(), keys);
    List<Text> texts = texts(pdf(List.of(many), Paper.LETTER));
    assertEquals(keys, texts.stream().map(Text::text).filter(text -> text.startsWith("A-01-")).sorted().toList());
    assertTrue(texts.stream().anyMatch(text -> text.text().equals("Cut 1, further keys")));
  }

  @Test
  void everySheetNamesItsNumberAndTheirCount() throws Exception {
    List<CutGroup> many = IntStream.range(0, 12).mapToObj(i -> groups.get(i % groups.size())).toList();
    byte[] pdf = pdf(many, Paper.LETTER);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      int count = document.getNumberOfPages();
      assertTrue(count > 1);
      assertEquals(IntStream.rangeClosed(1, count).mapToObj(i -> i + " of " + count).toList(),
          texts(pdf).stream().map(Text::text).filter(text -> text.matches("\\d+ of \\d+")).toList());
    }
  }

  @Test
  void everySheetWarnsOfTheDust() throws Exception {
    assertTrue(all(pdf(groups, Paper.A3)).contains("crystalline silica dust"));
  }

  @Test
  void aMuralWithoutCutsSaysSo() throws Exception {
    assertTrue(all(pdf(List.of(), Paper.A4)).contains("No tile of this mural is cut."));
  }

  @Test
  void theSameMuralGivesTheSameBytes() throws Exception {
    assertArrayEquals(pdf(groups, Paper.A4), pdf(groups, Paper.A4));
  }

  @Test
  void millimetresAreShownAsSuch() throws Exception {
    MuralSetOut metric = SampleMural.of(LengthUnit.MILLIMETRE, SampleMural.panel("A"));
    assertTrue(all(pdf(metric, CutList.of(metric), Paper.A4)).contains("Piece 152.5 × 100 mm"));
  }

  private byte[] pdf(List<CutGroup> shown, Paper paper) throws Exception {
    return pdf(mural, shown, paper);
  }

  private static byte[] pdf(MuralSetOut setOut, List<CutGroup> shown, Paper paper) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CutSheets.write(new ExportContext(setOut, List.of(), paper, SampleMural.DATE), shown, out);
    return out.toByteArray();
  }

  private static List<Text> texts(byte[] pdf) throws Exception {
    List<Text> texts = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        texts.addAll(ReadSheet.texts(document, page));
      }
    }
    return texts;
  }

  private static String all(byte[] pdf) throws Exception {
    Stream<String> texts = texts(pdf).stream().map(Text::text);
    return String.join(" ", texts.toList());
  }
}
