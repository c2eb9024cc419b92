// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import muralbench.pattern.motif.Edge;
import muralbench.pattern.motif.Motif;
import muralbench.pattern.motif.Orientation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A block over several tiles. */
class BlockSpreadTest {
  private static final BlockLibrary LIBRARY = BlockLibrary.load();

  static Stream<Block> blocks() {
    return LIBRARY.blocks().stream();
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void theTilesTogetherShowTheBlock(Block block) {
    BlockSpread spread = BlockSpread.of(block, 3);
    for (String colour : block.shares().keySet()) {
      double share = 0;
      for (int i = 0; i < 9; i++) {
        share += spread.part(i % 3, i / 3).shares().getOrDefault(colour, 0.0) / 9;
      }
      assertEquals(block.shares().get(colour).value(), share, 1e-9);
    }
  }

  /** Cut where no piece ends: eleven tiles each way share no edge with the units of any block. */
  @ParameterizedTest
  @MethodSource("blocks")
  void coloursGoOnFromTileToTile(Block block) {
    BlockSpread spread = BlockSpread.of(block, 11);
    Motif middle = spread.part(4, 6);
    assertTrue(middle.joins(Orientation.AS_DRAWN, Edge.RIGHT, spread.part(5, 6), Orientation.AS_DRAWN));
    assertTrue(middle.joins(Orientation.AS_DRAWN, Edge.BOTTOM, spread.part(4, 5), Orientation.AS_DRAWN));
  }

  @ParameterizedTest
  @CsvSource({"Ohio Star,3,0", "Ohio Star,1,0", "Ohio Star,2,5", "Sawtooth Star,2,0", "Sawtooth Star,3,12",
      "Bear's Paw,7,0", "Bear's Paw,2,13"})
  void unitsThatTileEdgesCutAreCounted(String name, int tiles, int cut) {
    assertEquals(cut, BlockSpread.of(LIBRARY.find(name).orElseThrow(), tiles).cutUnits().size());
  }

  @Test
  void theNoteSaysWhichUnitsAreCut() {
    Block star = LIBRARY.find("Ohio Star").orElseThrow();
    assertEquals("3 x 3 units on 2 x 2 tiles: tile edges cut 5 units, those in column or row 2",
        BlockSpread.of(star, 2).note());
    assertEquals("3 x 3 units on 3 x 3 tiles: no tile edge cuts a unit", BlockSpread.of(star, 3).note());
    assertEquals(List.of(0, 1, 2), BlockSpread.of(star, 6).cutColumns());
  }
}
