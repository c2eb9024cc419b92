// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.cuts;

import java.util.List;

/**
 * Rows of texts and numbers, for CSV and spreadsheets alike.
 *
 * @param columns names of the columns for programs, lower case with underlines, never translated
 * @param rows for every column a {@link String}, an {@link Integer} or a {@link Double}
 */
record Table(List<String> columns, List<List<Object>> rows) {
  Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }
}
