// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import muralbench.base.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The text form of a motif. */
class MotifTextTest {
  @Test
  void aMotifReadsBackTheSame() {
    Motif motif = Drawings.read("motif \"Reed and knot\"\ntile 150 100\ntiles 2\nground \"old white\"\n"
        + "# the reed\nregion reed green M 10 10 L 90 20 C 95 40 80 60 30 90 Z\nline vein M 20 20 L 60 30 L 50 40");
    Motif back = Drawings.read(MotifText.print(motif));
    assertEquals(MotifText.print(motif), MotifText.print(back));
    assertTrue(motif.picture().same(back.picture()));
    assertEquals(motif.waxLength(), back.waxLength(), 1e-9);
    assertEquals(2, back.lines().get(0).segments().size());
  }

  @Test
  void aRemarkEndsALineButNotAQuotedName() {
    Motif motif = Drawings.tile("region \"leaf #2\" \"#1a2b3c\" M 0 0 H 1 V 1 Z # lower half");
    assertEquals("leaf #2", motif.regions().get(0).name());
    assertEquals(0.5, motif.shares().get("#1a2b3c"), 1e-9);
  }

  @Test
  void aClosedLineIsClosed() {
    assertEquals(3, Drawings.tile("line ring M 0.1 0.1 H 0.4 L 0.2 0.3 Z").lines().get(0).segments().size());
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', value = {"region leaf red M 0 0 K; line 4", "regoin leaf red M 0 0; starts with regoin",
      "tile 1 0; is not a number", "tile 1; too few parts", "region \"leaf red M 0 0; quotation mark",
      "ground red green; too many parts", "tiles 1.5; whole number"})
  void aFaultNamesItsLine(String line, String part) {
    InputException refusal = assertThrows(InputException.class,
        () -> MotifText.parse("reed.txt", "motif Test\ntile 1 1\nground white\n" + line));
    assertEquals("reed.txt", refusal.place());
    assertTrue(refusal.getMessage().contains(part), refusal.getMessage());
    assertTrue(refusal.getMessage().contains("line 4"), refusal.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"motif,name", "tile,tile", "ground,ground"})
  void whatIsMissingIsNamed(String left, String word) {
    String text = "motif Test\ntile 1 1\nground white\n".replaceAll("(?m)^" + left + " .*$", "");
    InputException refusal = assertThrows(InputException.class, () -> MotifText.parse("reed.txt", text));
    assertTrue(refusal.getMessage().contains("does not say its " + word), refusal.getMessage());
  }
}
