// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import muralbench.base.InputException;
import muralbench.pattern.symmetry.Rational;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Blocks as text: what each word means, and what is refused. */
class BlockTextTest {
  private static final String HEAD = "block Test\ngrid 2\ncolour A light\ncolour B dark\ncolour C red\n";

  @ParameterizedTest
  @CsvSource({"A,1,0", "A/B,1/2,1/2", "A\\B,1/2,1/2", "A:B:C:B,1/4,1/2", "A/B:C,1/2,1/4", "A:B/C,1/4,1/4",
      "A\\B:C,1/2,1/4", "A:B\\C,1/4,1/4", "A-B,1/2,1/2", "A|B|C,1/3,1/3", "<A>B,1/2,1/2"})
  void aUnitHasTheSharesOfItsWord(String word, String ofA, String ofB) throws InputException {
    Map<String, ExactArea> shares = block("grid 1\n" + word).shares();
    assertEquals(Rational.parse(ofA), shares.get("light").straight());
    assertEquals(Rational.parse(ofB), shares.getOrDefault("dark", ExactArea.NONE).straight());
  }

  /** Which colour lies where: at the middles of the sides of the unit, top, right, bottom, left. */
  @ParameterizedTest
  @CsvSource({"A/B,light dark dark light", "A\\B,dark dark light light", "A:B:C:A,light dark red light",
      "A/B:C,light dark red light", "A:B/C,dark red red light", "A\\B:C,dark red light light",
      "A:B\\C,red red light dark"})
  void coloursLieWhereTheWordSays(String word, String expected) throws InputException {
    Block block = block("grid 1\n" + word);
    String found = at(block, 0.5, 0.9) + ' ' + at(block, 0.9, 0.5) + ' ' + at(block, 0.5, 0.1) + ' '
        + at(block, 0.1, 0.5);
    assertEquals(expected, found);
  }

  private static String at(Block block, double x, double y) {
    return block.motif().window(x - 0.01, y - 0.01, 0.02, 0.02).shares().keySet().iterator().next();
  }

  @ParameterizedTest
  @CsvSource({"sw(A)B,0.1,0.1", "se(A)B,0.9,0.1", "ne(A)B,0.9,0.9", "nw(A)B,0.1,0.9"})
  void aQuarterCircleLiesInItsCorner(String word, double x, double y) throws InputException {
    Block block = block("grid 1\nradius 2/3\n" + word);
    assertEquals("light", at(block, x, y));
    assertEquals("dark", at(block, 1 - x, 1 - y));
    assertEquals(Math.PI / 9, block.shares().get("light").value(), 1e-12);
    assertEquals("1 + -1/9 pi", block.shares().get("dark").toString());
  }

  @ParameterizedTest
  @CsvSource({"up,0.5,0.1", "down,0.5,0.9"})
  void geesePointWhereTheySay(String direction, double x, double y) throws InputException {
    Block block = block(". .\n. .\nrectangle A 0,1 2,1\ngeese 0,0 " + direction + " B C");
    assertEquals("dark", at(block, 1, y));
    assertEquals("red", at(block, x / 4, 1 - y));
  }

  @ParameterizedTest
  @CsvSource({"left,0.9", "right,0.1"})
  void geesePointAside(String direction, double base) throws InputException {
    Block block = block(". A\n. A\ngeese 0,0 " + direction + " B C");
    assertEquals("dark", at(block, base, 1));
    assertEquals("red", at(block, 1 - base, 0.2));
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', value = {
      "A B|B .; 1 of 4 square units are not covered, near (1.5, 0.5)",
      "A B|B A|shape C 0,0 1,0 1,1; overlap near",
      "A .|B A|shape C 1,1 2,1 2,2 5/4,2 1,3/2; 0.0625 of 4 square units are not covered",
      "A B|B .|shape C 1,0 3,0 3,1 1,1; leaves the block",
      "A B|B .|shape C 1,0 2,1 2,0 1,1; crosses itself",
      "A B|B; row 2 of the block has 1 units",
      "A B|B D; uses the colour D",
      "A B|B A//B; unit A//B in line 7",
      "A B|B A|A A; line 8 starts with A",
      "A B; no rows",
      "A B|B .|rectangle C 1,0 1; line 8 cannot be read. Write it as: rectangle COLOUR X,Y WIDTH,HEIGHT",
      "A B|B .|geese 1,0 north B C; line 8 cannot be read",
      "A B|B .|shape C 1,0 2,1/0 2,1; line 8 cannot be read"})
  void whatIsWrongIsTold(String rows, String message) {
    InputException refusal = assertThrows(InputException.class, () -> block(rows.replace('|', '\n')));
    assertTrue(refusal.getMessage().contains(message), refusal.getMessage());
  }

  @Test
  void twoBlocksOfOneNameAreRefused() {
    String one = HEAD + "A B\nB A\n";
    InputException refusal = assertThrows(InputException.class, () -> BlockText.parse("blocks.txt", one + one));
    assertTrue(refusal.getMessage().contains("two blocks are named Test"), refusal.getMessage());
  }

  @Test
  void linesBeforeTheFirstBlockAreRefused() {
    InputException refusal = assertThrows(InputException.class, () -> BlockText.parse("blocks.txt", "# x\ngrid 3"));
    assertEquals("blocks.txt: line 2 comes before the first block. Begin a block with a line: block NAME.",
        refusal.getMessage());
  }

  private static Block block(String lines) throws InputException {
    return BlockText.parse("blocks.txt", HEAD + lines).get(0);
  }
}
