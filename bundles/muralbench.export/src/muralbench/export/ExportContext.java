// SPDX-License-Identifier: EPL-2.0
package muralbench.export;

import java.time.LocalDate;
import java.util.List;
import muralbench.base.Finding;
import muralbench.base.length.LengthUnit;
import muralbench.setout.MuralSetOut;

/**
 * What an exporter may show.
 *
 * @param setOut the mural, set out
 * @param findings what the checks found
 * @param paper the paper for printed documents
 * @param date the date printed on documents
 */
public record ExportContext(MuralSetOut setOut, List<Finding> findings, Paper paper, LocalDate date) {
  public ExportContext {
    findings = List.copyOf(findings);
  }

  /** The mural's units of display. */
  public LengthUnit units() {
    return setOut.spec().units();
  }
}
