// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import muralbench.export.internal.PlainNumber;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Comma-separated values by RFC 4180: a header line, lines ending in CR LF, UTF-8. A spreadsheet takes a cell that
 * begins with one of {@code = + - @}, a tab or a line end for a formula, also when it was quoted, and would run what a
 * person put into a title; such a text gets an apostrophe in front (OWASP, CSV injection). Numbers stay numbers.
 */
final class SafeCsv {
  private static final String DANGEROUS = "=+-@\t\r\n\uff1d\uff0b\uff0d\uff20";

  private SafeCsv() {}

  /** Writes a table and leaves the stream open. */
  static void write(Table table, OutputStream out) throws IOException {
    Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180);
    csv.printRecord(table.columns());
    for (List<Object> row : table.rows()) {
      csv.printRecord(row.stream().map(SafeCsv::cell));
    }
    csv.flush();
  }

  private static String cell(Object value) {
    if (value instanceof Double number) {
      return PlainNumber.text(number);
    }
    String text = value.toString();
    boolean dangerous = value instanceof String && !text.isEmpty() && DANGEROUS.indexOf(text.charAt(0)) >= 0;
    return dangerous ? "'" + text : text;
  }
}
