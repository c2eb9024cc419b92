// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import muralbench.export.ForeignTool;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafeCsvTest {
  /** The grammar of RFC 4180, section 2, for files whose last line is ended. */
  private static final String FIELD = "(?:\"(?:[^\"]|\"\")*\"|[^\",\\r\\n]*)";
  private static final Pattern FILE = Pattern.compile("(?:" + FIELD + "(?:," + FIELD + ")*+\\r\\n)++");

  @TempDir
  Path folder;

  @Test
  void followsTheGrammarOfRfc4180() throws Exception {
    String csv = csv("plain", "with, comma", "with \"quotes\"", "two\nlines", "");
    assertTrue(FILE.matcher(csv).matches(), csv);
  }

  @Test
  void isReadBackAsItWas() throws Exception {
    List<String> cells = List.of("plain", "with, comma", "with \"quotes\"", "two\r\nlines", "", "Küche 厨房");
    CSVRecord row = CSVParser.parse(csv(cells.toArray()), CSVFormat.RFC4180).getRecords().get(1);
    assertEquals(cells, row.toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@sum", "\tx", "\rx", "\nx", "\uff1d1"})
  void aTextThatASpreadsheetWouldRunGetsAnApostrophe(String dangerous) throws Exception {
    CSVRecord row = CSVParser.parse(csv(dangerous, "x"), CSVFormat.RFC4180).getRecords().get(1);
    assertEquals("'" + dangerous, row.get(0));
  }

  @Test
  void numbersStayNumbers() throws Exception {
    assertEquals("a,b,c\r\n-3,5.4375,0.00001\r\n", csv(-3, 5.4375, 1e-5));
  }

  @Test
  void pythonReadsTheSame() throws Exception {
    Path file = folder.resolve("list.csv");
    Files.writeString(file, csv("with, comma", "with \"quotes\"", "two\nlines"));
    ForeignTool.Result read = ForeignTool.run("python3", "-c", "import csv,sys,json\n"
        + "print(json.dumps(list(csv.reader(open(sys.argv[1], newline='', encoding='utf-8')))))", file.toString());
    assertEquals("[[\"a\", \"b\", \"c\"], [\"with, comma\", \"with \\\"quotes\\\"\", \"two\\nlines\"]]",
        read.text().strip());
  }

  private static String csv(Object... cells) throws Exception {
    List<String> columns = new ArrayList<>();
    for (int i = 0; i < cells.length; i++) {
      columns.add(Character.toString('a' + i));
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SafeCsv.write(new Table(columns, List.of(List.of(cells))), out);
    return out.toString(StandardCharsets.UTF_8);
  }
}
