// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import muralbench.export.Paper;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PrintDocumentTest {
  private static final SheetSize A4 = SheetSize.of(Paper.A4, true);

  @FunctionalInterface
  interface Drawing {
    void on(Canvas canvas) throws IOException;
  }

  static byte[] printed(Drawing drawing) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Lettering lettering = Lettering.open();
        PrintDocument document = new PrintDocument("Tide wall", "Trial", LocalDate.of(2031, 5, 6), lettering)) {
      drawing.on(document.sheet(A4, "1"));
      document.chapter("Trial");
      document.save(bytes);
    }
    return bytes.toByteArray();
  }

  private static String textOf(Drawing drawing) throws IOException {
    try (PDDocument document = Loader.loadPDF(printed(drawing))) {
      return new PDFTextStripper().getText(document).strip();
    }
  }

  private static Drawing text(String text) {
    return canvas -> canvas.text(text, Type.plain(3), new Vec(30, 100), Canvas.Align.LEFT);
  }

  @Test
  void equalDrawingsGiveEqualBytes() throws IOException {
    assertArrayEquals(printed(text("Storm light")), printed(text("Storm light")));
  }

  @Test
  void textsOfManyScriptsAreReadBack() throws IOException {
    String title = "Łukasz Đặng, affine file, Ελλάς, Якорь, ½ ×";
    assertEquals(title, textOf(text(title)));
  }

  @Test
  void signsTheFontLacksAreShownAsAMark() throws IOException {
    assertEquals("a\uFFFD\uFFFDb \uFFFDc", textOf(text("a\u6F6E\uD840\uDC00b\t\uD800c")));
  }

  @Test
  void rightToLeftTextsArePutInVisualOrder() throws IOException {
    try (Lettering lettering = Lettering.open()) {
      assertEquals("A \u05D2\u05D1\u05D0", lettering.printable("A \u05D0\u05D1\u05D2", Type.plain(3)));
    }
  }

  @Test
  void fontsAreEmbeddedAsSubsetsWithTheirSigns() throws IOException {
    try (PDDocument document = Loader.loadPDF(printed(text("Low water")))) {
      PDPage page = document.getPage(0);
      for (COSName name : page.getResources().getFontNames()) {
        PDFont font = page.getResources().getFont(name);
        assertTrue(font.isEmbedded() && font.getCOSObject().containsKey(COSName.TO_UNICODE), font.getName());
        assertEquals('+', font.getName().charAt(6), "subset tag of ISO 32000-1, 9.6.4");
      }
    }
  }

  @Test
  void sheetIsAsLargeAsItsPaper() throws IOException {
    try (PDDocument document = Loader.loadPDF(printed(text("x")))) {
      assertEquals(297, document.getPage(0).getMediaBox().getWidth() * ReadSheet.POINT, 0.01);
      assertEquals(210, document.getPage(0).getMediaBox().getHeight() * ReadSheet.POINT, 0.01);
    }
  }

  @Test
  void capitalsHaveTheHeightAskedFor() throws IOException {
    try (PDDocument document = Loader.loadPDF(printed(text("H")))) {
      assertEquals(3, ReadSheet.texts(document, 0).get(0).height(), 0.01);
    }
  }

  @Test
  void checkLineMeasuresAHundredMillimetres() throws IOException {
    try (PDDocument document = Loader.loadPDF(printed(canvas -> CheckLine.draw(canvas, new Vec(40, 30))))) {
      List<Vec> line = ReadSheet.paths(document.getPage(0)).get(0).points();
      assertEquals(100, line.get(0).distance(line.get(1)), 0.001);
    }
  }

  @Test
  void circleStaysACurve() throws IOException {
    Contour circle = Contour.circle(new Vec(100, 100), 60);
    try (PDDocument document = Loader.loadPDF(printed(canvas -> canvas.stroke(List.of(circle), Pen.THIN)))) {
      ReadSheet.Path path = ReadSheet.paths(document.getPage(0)).get(0);
      assertEquals(12, path.curves());
      assertTrue(path.points().stream().allMatch(p -> Math.abs(p.distance(new Vec(100, 100)) - 60) < 0.001));
    }
  }
}
