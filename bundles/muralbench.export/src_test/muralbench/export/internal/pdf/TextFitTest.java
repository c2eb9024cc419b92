// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class TextFitTest {
  private static final Type TYPE = Type.plain(2);
  private static Lettering lettering;

  @BeforeAll
  static void openFonts() throws IOException {
    lettering = Lettering.open();
  }

  @AfterAll
  static void closeFonts() throws IOException {
    lettering.close();
  }

  @Test
  void shortTextsStayWhole() throws IOException {
    assertEquals("Low water", new TextFit(lettering).shortened("Low water", TYPE, 60));
  }

  @Test
  void longTextsEndInAnEllipsisAndFit() throws IOException {
    String shown = new TextFit(lettering).shortened("A ferry landing on a salt marsh", TYPE, 20);
    assertTrue(shown.startsWith("A ferry") && shown.endsWith("…") && lettering.width(shown, TYPE) <= 20, shown);
  }

  @Test
  void wrappedLinesFitAndKeepEveryWord() throws IOException {
    String text = "Set from the datum, courses numbered from the bottom, positions from the left.";
    List<String> lines = new TextFit(lettering).wrapped(text, TYPE, 30);
    assertEquals(text, String.join(" ", lines));
    for (String line : lines) {
      assertTrue(lettering.width(line, TYPE) <= 30, line);
    }
  }
}
