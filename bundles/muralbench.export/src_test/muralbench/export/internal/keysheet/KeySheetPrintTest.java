// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.keysheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.export.ForeignTool;
import muralbench.export.Paper;
import muralbench.export.internal.pdf.Pen;
import muralbench.export.internal.pdf.ReadSheet;
import muralbench.setout.PanelSetOut;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Reads the printed sheets back. */
class KeySheetPrintTest {
  @TempDir
  Path folder;

  private static PanelSetOut[] panels() throws InputException {
    return new PanelSetOut[] {TrialWalls.splash(), TrialWalls.facade(), TrialWalls.round(), TrialWalls.slivers(),
        TrialWalls.rings()};
  }

  private PDDocument printed(Paper paper) throws InputException, IOException {
    LengthUnit units = paper == Paper.A3 || paper == Paper.A4 ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    return PrintedSheets.printed(folder, paper, units, panels());
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everySheetIsAsLargeAsThePaper(Paper paper) throws Exception {
    try (PDDocument document = printed(paper)) {
      for (PDPage page : document.getPages()) {
        double width = page.getMediaBox().getWidth() * ReadSheet.POINT;
        double height = page.getMediaBox().getHeight() * ReadSheet.POINT;
        assertEquals(paper.width(), Math.min(width, height), 0.02);
        assertEquals(paper.height(), Math.max(width, height), 0.02);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everyKeyStandsOnceInTheText(Paper paper) throws Exception {
    try (PDDocument document = printed(paper)) {
      StringBuilder all = new StringBuilder();
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        ReadSheet.texts(document, page).forEach(text -> all.append(text.text()).append('\n'));
      }
      assertEquals(PrintedSheets.keys(panels()), PrintedSheets.keys(all.toString()));
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void keysAreAtLeastTwoAndAHalfMillimetresHigh(Paper paper) throws Exception {
    try (PDDocument document = printed(paper)) {
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        for (ReadSheet.Text key : PrintedSheets.keyTexts(document, page)) {
          assertTrue(key.height() >= 2.5, key.toString());
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void noKeyTouchesAnother(Paper paper) throws Exception {
    try (PDDocument document = printed(paper)) {
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        List<ReadSheet.Text> keys = PrintedSheets.keyTexts(document, page);
        for (int i = 0; i < keys.size(); i++) {
          for (int j = 0; j < i; j++) {
            assertFalse(keys.get(i).box().meets(keys.get(j).box()), keys.get(i) + " and " + keys.get(j));
          }
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void keysOfOneCourseStandApart(Paper paper) throws Exception {
    try (PDDocument document = printed(paper)) {
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        List<ReadSheet.Text> keys = PrintedSheets.keyTexts(document, page);
        for (ReadSheet.Text key : keys) {
          Box near = new Box(key.box().minX() - 0.79, key.box().minY(), key.box().maxX() + 0.79, key.box().maxY());
          assertEquals(1, keys.stream().filter(other -> near.meets(other.box())).count(), key.toString());
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void textsStayOnTheSheet(Paper paper) throws Exception {
    try (PDDocument document = printed(paper)) {
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        double right = document.getPage(page).getMediaBox().getWidth() * ReadSheet.POINT - 10;
        double top = document.getPage(page).getMediaBox().getHeight() * ReadSheet.POINT - 10;
        for (ReadSheet.Text text : ReadSheet.texts(document, page)) {
          boolean inFrame = text.box().minX() >= 20 && text.box().minY() >= 10 && text.box().maxX() <= right
              && text.box().maxY() <= top;
          assertTrue(inFrame, text.toString());
        }
      }
    }
  }

  @Test
  void everySheetHasACheckLineOfAHundredMillimetres() throws Exception {
    try (PDDocument document = printed(Paper.LETTER)) {
      for (PDPage page : document.getPages()) {
        assertTrue(ReadSheet.paths(page).stream().anyMatch(KeySheetPrintTest::isCheckLine), "no check line");
      }
    }
  }

  private static boolean isCheckLine(ReadSheet.Path path) {
    List<Vec> points = path.points();
    return points.size() == 2 && points.get(0).y() == points.get(1).y()
        && Math.abs(points.get(0).distance(points.get(1)) - 100) <= 0.1
        && Math.abs(path.width() - Pen.MEDIUM.width()) < 0.001;
  }

  @Test
  void fontsAreEmbedded() throws Exception {
    try (PDDocument document = printed(Paper.A4)) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertTrue(page.getResources().getFont(name).isEmbedded());
        }
      }
    }
  }

  @Test
  void sheetsSayWhatAnInstallerNeeds() throws Exception {
    try (PDDocument document = PrintedSheets.printed(folder, Paper.LETTER, LengthUnit.INCH, TrialWalls.splash())) {
      List<String> texts = ReadSheet.texts(document, 1).stream().map(ReadSheet.Text::text).toList();
      assertTrue(texts.containsAll(Set.of("Ferry landing", "Marsh Café, Łódź", "2 of 2", "1 in = 1 ft (1:12)", "B",
          "2031-05-06", "level datum line, 42 in above finished floor", "plumb line", "centre line of panel")),
          texts.toString());
    }
  }

  @Test
  void anotherReaderFindsEveryKeyOnce() throws Exception {
    Path file = PrintedSheets.print(folder, TrialWalls.mural(LengthUnit.INCH, panels()), Paper.TABLOID, Progress.NONE);
    ForeignTool.Result result = ForeignTool.run("pdftotext", file.toString(), "-");
    assertEquals(PrintedSheets.keys(panels()), PrintedSheets.keys(result.text()));
  }

  @Test
  void anotherReaderFindsTitleAndSize() throws Exception {
    Path file = PrintedSheets.print(folder, TrialWalls.mural(LengthUnit.INCH, panels()), Paper.TABLOID, Progress.NONE);
    String info = ForeignTool.run("pdfinfo", file.toString()).text();
    assertTrue(info.contains("Key sheets: Ferry landing") && info.contains("1224 x 792 pts"), info);
  }

  @Test
  void anotherReaderFindsTheFileSound() throws Exception {
    Path file = PrintedSheets.print(folder, TrialWalls.mural(LengthUnit.INCH, panels()), Paper.A3, Progress.NONE);
    ForeignTool.Result result = ForeignTool.run("qpdf", "--check", file.toString());
    assertEquals(0, result.exit(), result.text());
  }
}
