// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import muralbench.base.Messages;
import muralbench.export.ExportContext;
import muralbench.export.internal.PrintableText;
import muralbench.setout.order.OrderList;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * The cutting list as a spreadsheet with the sheets cuts, pieces, made up where pieces share tiles, and totals. Texts
 * are stored as texts, so that no spreadsheet takes one for a formula.
 */
final class CutWorkbook {
  private static final Messages TEXT = Messages.of(CutWorkbook.class);
  /** The most a cell can hold (ECMA-376 readers agree on 32 767 characters). */
  private static final int LARGEST_CELL = 32_767;
  private static final double WIDEST = 80;
  private static final int NARROWEST = 8;

  private final ExportContext context;
  private final CutTables tables;

  CutWorkbook(ExportContext context, CutTables tables) {
    this.context = context;
    this.tables = tables;
  }

  /** Writes the workbook and leaves the stream open. */
  void write(OutputStream out) throws IOException {
    StampedWorkbook.write(this::sheets, context.date(), out);
  }

  private void sheets(OutputStream out) throws IOException {
    Workbook workbook = new Workbook(out, "Muralbench", "0.1");
    listing(workbook.newWorksheet(TEXT.text("sheet.cuts")), tables.cuts());
    listing(workbook.newWorksheet(TEXT.text("sheet.pieces")), tables.pieces());
    if (!tables.madeUp().rows().isEmpty()) {
      listing(workbook.newWorksheet(TEXT.text("sheet.madeUp")), tables.madeUp());
    }
    totals(workbook.newWorksheet(TEXT.text("sheet.totals")));
    workbook.finish();
  }

  private void listing(Worksheet sheet, Table table) throws IOException {
    table(sheet, table, 0);
    sheet.freezePane(0, 1);
    sheet.repeatRows(0);
    sheet.setAutoFilter(0, 0, table.rows().size(), table.columns().size() - 1);
    sheet.pageOrientation("landscape");
    sheet.fitToWidth((short) 1);
    sheet.fitToHeight((short) 0);
    widths(sheet, table);
    sheet.finish();
  }

  private void totals(Worksheet sheet) throws IOException {
    List<String> about = List.of("project", context.setOut().spec().title(), "client",
        context.setOut().spec().client(), "revision", context.setOut().spec().revision(), "date",
        context.date().toString());
    int row = 0;
    for (int i = 0; i < about.size(); i += 2) {
      sheet.value(row, 0, TEXT.text("about." + about.get(i)));
      sheet.style(row, 0).bold().set();
      sheet.value(row++, 1, fit(about.get(i + 1)));
    }
    Table panels = tables.panels();
    row = table(sheet, panels, row + 1);
    sheet.value(row - 1, 0, TEXT.text("total"));
    sheet.range(row - 1, 0, row - 1, panels.columns().size() - 1).style().bold().set();
    row = table(sheet, tables.tiles(), row + 1);
    row = table(sheet, tables.order(), row + 1);
    sheet.value(row, 0, OrderList.note());
    Table boards = new BoardTable(context.setOut()).table();
    if (!boards.rows().isEmpty()) {
      row = table(sheet, boards, row + 2);
      sheet.value(row, 0, TEXT.text("boards.note"));
    }
    widths(sheet, panels);
    sheet.width(1, 40);
    sheet.finish();
  }

  /** Writes header and rows from a row on; answers the row after the last. */
  private int table(Worksheet sheet, Table table, int first) {
    int columns = table.columns().size();
    for (int column = 0; column < columns; column++) {
      sheet.value(first, column, heading(table.columns().get(column)));
    }
    sheet.range(first, 0, first, columns - 1).style().bold().wrapText(true).fillColor("E6E6E6").set();
    int row = first + 1;
    for (List<Object> cells : table.rows()) {
      for (int column = 0; column < columns; column++) {
        cell(sheet, row, column, table.columns().get(column), cells.get(column));
      }
      row++;
    }
    return row;
  }

  private String heading(String column) {
    return TEXT.text("column." + column, "unit", context.units().symbol(), "area", tables.areaUnit());
  }

  private static void cell(Worksheet sheet, int row, int column, String name, Object value) {
    if (value instanceof Number number) {
      sheet.value(row, column, number);
    } else if (!value.toString().isEmpty()) {
      sheet.value(row, column, fit(value.toString()));
      if (name.startsWith("keys")) {
        sheet.style(row, column).wrapText(true).verticalAlignment("top").set();
      }
    }
  }

  private static String fit(String text) {
    String printable = PrintableText.of(text);
    if (printable.length() <= LARGEST_CELL) {
      return printable;
    }
    String more = TEXT.text("keys.more");
    int room = LARGEST_CELL - more.length();
    int lastKey = printable.lastIndexOf(' ', room);
    return printable.substring(0, lastKey > 0 ? lastKey : room) + more;
  }

  /** Columns as wide as their longest text, within reason. */
  private void widths(Worksheet sheet, Table table) {
    for (int column = 0; column < table.columns().size(); column++) {
      int longest = Math.max(NARROWEST, heading(table.columns().get(column)).length());
      for (List<Object> row : table.rows()) {
        longest = Math.max(longest, row.get(column).toString().length());
      }
      sheet.width(column, Math.min(WIDEST, longest + 2));
    }
  }
}
