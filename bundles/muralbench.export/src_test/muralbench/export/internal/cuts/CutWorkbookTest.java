// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import muralbench.base.length.LengthUnit;
import muralbench.export.SampleMural;
import muralbench.setout.MuralSetOut;
import muralbench.setout.cut.CutGroup;
import muralbench.setout.cut.CutList;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** Read back with Apache POI, which shares no code with the writer. */
class CutWorkbookTest {
  private final MuralSetOut mural = SampleMural.inches();

  @Test
  void hasTheSheetsCutsPiecesAndTotals() throws Exception {
    XSSFWorkbook book = book(mural, CutList.of(mural));
    assertEquals(List.of("Cuts", "Pieces", "Totals"),
        List.of(book.getSheetName(0), book.getSheetName(1), book.getSheetName(2)));
  }

  @Test
  void headersStayInSightAndNameTheUnit() throws Exception {
    XSSFSheet cuts = book(mural, CutList.of(mural)).getSheet("Cuts");
    assertEquals(1, cuts.getPaneInformation().getHorizontalSplitPosition());
    assertTrue(cuts.getPaneInformation().isFreezePane());
    assertEquals("Width (in)", cuts.getRow(0).getCell(6).getStringCellValue());
    assertTrue(cuts.getColumnWidth(11) > cuts.getColumnWidth(0), "keys are wider than numbers");
  }

  @Test
  void everyCellHoldsWhatTheTableSays() throws Exception {
    List<CutGroup> groups = CutList.of(mural);
    XSSFWorkbook book = book(mural, groups);
    assertSame(new CutTables(mural, groups).cuts(), book.getSheet("Cuts"));
    assertSame(new CutTables(mural, groups).pieces(), book.getSheet("Pieces"));
  }

  private static void assertSame(Table table, XSSFSheet sheet) {
    assertEquals(table.rows().size(), sheet.getLastRowNum());
    for (int row = 0; row < table.rows().size(); row++) {
      List<Object> cells = table.rows().get(row);
      for (int column = 0; column < cells.size(); column++) {
        assertEquals(shown(cells.get(column)), shown(sheet.getRow(row + 1).getCell(column)));
      }
    }
  }

  private static Object shown(Object value) {
    return value instanceof Number number ? (Object) number.doubleValue() : value;
  }

  private static Object shown(Cell cell) {
    if (cell == null) {
      return "";
    }
    return cell.getCellType() == CellType.NUMERIC ? (Object) cell.getNumericCellValue() : cell.getStringCellValue();
  }

  @Test
  void theTotalsSheetAddsUp() throws Exception {
    XSSFSheet totals = book(mural, CutList.of(mural)).getSheet("Totals");
    assertEquals("Harbour wall", totals.getRow(0).getCell(1).getStringCellValue());
    Row all = totals.getRow(7);
    assertEquals("All panels", all.getCell(0).getStringCellValue());
    assertEquals(12, all.getCell(2).getNumericCellValue());
    assertEquals(6, all.getCell(4).getNumericCellValue());
  }

  @Test
  void piecesThatShareATileHaveASheet() throws Exception {
    MuralSetOut halves = CutTablesTest.halves();
    XSSFSheet made = book(halves, CutList.of(halves)).getSheet("Made up");
    assertEquals(4, made.getLastRowNum());
    assertEquals("Made up no.", made.getRow(0).getCell(0).getStringCellValue());
    assertEquals(2, made.getRow(4).getCell(0).getNumericCellValue());
    assertEquals(null, book(mural, CutList.of(mural)).getSheet("Made up"));
  }

  /** 12 tiles and 10 % are 13.2, so 14. */
  @Test
  void theTotalsSheetSaysWhatToOrder() throws Exception {
    XSSFSheet totals = book(mural, CutList.of(mural)).getSheet("Totals");
    assertEquals("Order with spares", totals.getRow(12).getCell(5).getStringCellValue());
    assertEquals(14, totals.getRow(13).getCell(5).getNumericCellValue());
    assertTrue(totals.getRow(14).getCell(0).getStringCellValue().contains("blanks from the same batch"));
  }

  @Test
  void aTitleThatLooksLikeAFormulaIsAText() throws Exception {
    String title = "=HYPERLINK(\"x\")<&>\u0001\ud83d\ude00";
    MuralSetOut hostile = SampleMural.of(title, LengthUnit.INCH, SampleMural.panel("=A"));
    Cell cell = book(hostile, CutList.of(hostile)).getSheet("Totals").getRow(0).getCell(1);
    assertEquals(CellType.STRING, cell.getCellType());
    assertEquals("=HYPERLINK(\"x\")<&>\ud83d\ude00", cell.getStringCellValue());
  }

  @Test
  void carriesTheDateOfTheDocumentAndNotTheTimeOfWriting() throws Exception {
    XSSFWorkbook book = book(mural, CutList.of(mural));
    assertEquals(SampleMural.DATE.atStartOfDay(ZoneOffset.UTC).toInstant(),
        book.getProperties().getCoreProperties().getCreated().toInstant());
  }

  @Test
  void moreKeysThanACellCanHoldPointToTheSheetOfPieces() throws Exception {
    CutGroup group = CutList.of(mural).get(0);
    List<String> keys = new ArrayList<>();
    for (int i = 1000; i < 9000; i++) {
      keys.add("A-01-" + i);
    }
    CutGroup many = new CutGroup(1, group.kind(), group.tile(), group.area(), group.face(), group.outline(),
        group.holes(), keys.stream().map(key -> new CutGroup.Placing(key, 0)).toList());
    String shown = book(mural, List.of(many)).getSheet("Cuts").getRow(1).getCell(11).getStringCellValue();
    assertTrue(shown.length() <= 32_767 && shown.matches("(A-01-\\d{4} )+\u2026 see the sheet of pieces"));
  }

  private static XSSFWorkbook book(MuralSetOut setOut, List<CutGroup> groups) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new CutWorkbook(SampleMural.context(setOut), new CutTables(setOut, groups)).write(out);
    return new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
  }
}
