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
import muralbench.setout.PieceKind;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.cut.CutGroup.Placing;
import muralbench.setout.cut.CutList;
import muralbench.setout.geometry.Arc;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
    // The notch of 60 mm by 40 mm is at the lower left, so that the right and the upper edge are kept: it starts
    // 92.4 mm (3.638 in) from the right and 112.4 mm (4.425 in) from above; the reader parts texts that
    // are printed upwards.
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
          .anyMatch(path -> isSized(path, SampleMural.TRIMMED / 3, SampleMural.TILE / 3)));
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
    CutGroup many = with(group, keys.stream()
        .map(key -> new Placing(key, key.compareTo("A-01-3") < 0 ? 0 : 90)).toList());
    List<Text> texts = texts(pdf(List.of(many), Paper.LETTER));
    assertEquals(keys, texts.stream().map(Text::text).filter(text -> text.startsWith("A-01-")).sorted().toList());
    assertTrue(texts.stream().anyMatch(text -> text.text().equals("Cut 1, further keys")));
    assertEverySheetLaysBeforeItListsKeys(texts);
  }

  /** Wherever keys go on, in a new column or on a new sheet, it is said again how their tiles are laid. */
  private static void assertEverySheetLaysBeforeItListsKeys(List<Text> texts) {
    String before = "";
    for (Text text : texts) {
      if (before.endsWith("further keys")) {
        assertTrue(text.text().startsWith("Lay the tile") || text.text().startsWith("First turn"), text.toString());
      }
      before = text.text();
    }
  }

  @Test
  void keysStandInLotsByTheTurnOfTheirTiles() throws Exception {
    CutGroup group = groups.get(1);
    List<Placing> placings = List.of(new Placing("A-01-04", 0), new Placing("A-02-04", 180), new Placing("A-03-04", 0),
        new Placing("A-04-04", 90), new Placing("A-05-04", 270), new Placing("A-06-04", 30),
        new Placing("A-07-04", 316.3));
    String printed = all(pdf(List.of(with(group, placings)), Paper.LETTER));
    for (String lot : List.of("Lay the tile as it hangs: A-01-04 A-03-04", "First turn the tile half a turn: A-02-04",
        "First turn the tile a quarter turn left: A-04-04", "First turn the tile a quarter turn right: A-05-04",
        "First turn the tile 30 degrees left (counter-clockwise): A-06-04",
        "First turn the tile 43.7 degrees right (clockwise): A-07-04")) {
      assertTrue(printed.contains(lot), printed);
    }
  }

  /** The arrow marked "up" is one of two, the other stands at the lot; both point the way the top of the tile lies. */
  @ParameterizedTest
  @CsvSource({"0, 0, 1", "90, -1, 0", "180, 0, -1", "270, 1, 0", "330, 0.5, 0.866"})
  void arrowsPointToTheTopOfTheTile(double turn, double x, double y) throws Exception {
    byte[] pdf = pdf(List.of(with(groups.get(1), List.of(new Placing("A-01-04", turn)))), Paper.LETTER);
    assertTrue(texts(pdf).stream().anyMatch(text -> text.text().equals("up")));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<ReadSheet.Path> heads = ReadSheet.paths(document.getPage(0)).stream().filter(ReadSheet.Path::filled)
          .filter(path -> path.points().stream().distinct().count() == 3).toList();
      assertEquals(2, heads.size());
      for (ReadSheet.Path head : heads) {
        Vec point = head.points().get(0);
        Vec along = point.minus(head.points().get(1).towards(head.points().get(2), 0.5));
        assertEquals(x, along.x() / along.length(), 0.01);
        assertEquals(y, along.y() / along.length(), 0.01);
      }
    }
  }

  /** A triangle with three different sides lies on its drawing in one way, however it hangs. */
  @Test
  void aTileThatFitsOneWayOnlyNeedsNoTurning() throws Exception {
    CutGroup group = groups.get(1);
    Contour face = Contour.polygon(List.of(Vec.ZERO, new Vec(150, 0), new Vec(20, 90)));
    CutGroup odd = new CutGroup(1, group.kind(), group.tile(), face.area(), face, face, List.of(),
        List.of(new Placing("A-01-04", 0), new Placing("A-02-04", 100)));
    String printed = all(pdf(List.of(odd), Paper.LETTER));
    assertTrue(printed.contains("Lay the tile as drawn; it fits one way only: A-01-04 A-02-04"), printed);
    assertFalse(texts(pdf(List.of(odd), Paper.LETTER)).stream().anyMatch(text -> text.text().equals("up")));
  }

  /** A wedge that nothing cuts is cut from a blank as wide and as high as itself: 150 mm and 90 mm, 5-7/8 by 3-9/16. */
  @Test
  void aCurvedFaceOfItsOwnIsCutFromABlank() throws Exception {
    Arc rim = Arc.circular(new Vec(75, 15), 75, 0, Math.PI);
    Contour face = new Contour(List.of(rim, new Line(rim.end(), new Vec(75, 0)),
        new Line(new Vec(75, 0), rim.start())));
    CutGroup wedge = new CutGroup(1, PieceKind.CURVED, "T6 ring1", face.area(), face, face, List.of(),
        List.of(new Placing("A-01-04", 0), new Placing("A-02-04", 100)));
    String printed = all(pdf(List.of(wedge), Paper.LETTER));
    assertTrue(printed.contains("from a blank of 5-7/8 × 3-9/16 in"), printed);
    assertTrue(printed.contains("Cut to this shape from a blank: A-01-04 A-02-04"), printed);
  }

  private static CutGroup with(CutGroup group, List<Placing> placings) {
    return new CutGroup(1, group.kind(), group.tile(), group.area(), group.face(), group.outline(), group.holes(),
        placings);
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
    assertTrue(all(pdf(metric, CutList.of(metric), Paper.A4)).contains("Piece 100 × 152.5 mm"));
  }

  /** Two tiles of 6 in, each sawn into two pieces of 2-31/32 in with 1/16 in for the saw. */
  @Test
  void tilesThatAreSawnAlikeAreDrawnOnceWithTheKeysOfEach() throws Exception {
    MuralSetOut halves = CutTablesTest.halves();
    String printed = all(pdf(halves, CutList.of(halves), Paper.LETTER));
    assertTrue(printed.contains("Made up: 2 tiles"), printed);
    assertTrue(printed.contains("T6, 6 in × 6 in") && printed.contains("painted after cutting"), printed);
    assertTrue(printed.contains("a: 3 in × 6 in, 0 in from left") && printed.contains("No. 2: a A-"), printed);
    halves.panels().get(0).pieces().stream().filter(piece -> piece.kind() != PieceKind.WHOLE)
        .forEach(piece -> assertEquals(3, printed.split(piece.key(), -1).length, piece.key()));
  }

  private byte[] pdf(List<CutGroup> shown, Paper paper) throws Exception {
    return pdf(mural, shown, paper);
  }

  private static byte[] pdf(MuralSetOut setOut, List<CutGroup> shown, Paper paper) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CutSheets.write(new ExportContext(setOut, List.of(), paper, SampleMural.DATE), shown,
        new CutTables(setOut, shown).shared(), out);
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
