// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import muralbench.base.Finding;
import muralbench.base.Grade;
import org.junit.jupiter.api.Test;

class FindingsReportTest {
  @Test
  void controlCharactersOfAMuralDoNotReachTheTerminal() {
    Finding finding = new Finding("joint.narrow", Grade.ERROR, "A\n", "T\u001b[2J is narrow", "Widen \u0085.", "none",
        Map.of());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    new FindingsReport(List.of(finding)).table(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    assertEquals(List.of("error    A\\n  T\\u001b[2J is narrow", " ".repeat(14) + "Widen \\u0085.",
        " ".repeat(14) + "Source: none"), bytes.toString(StandardCharsets.UTF_8).lines().toList());
  }
}
