// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import muralbench.pattern.motif.Colourway;
import muralbench.pattern.motif.Designs;
import muralbench.pattern.motif.Orientation;
import muralbench.pattern.symmetry.Rational;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The traditional blocks: each whole, each once, the well-known ones with the counts and shares they are known for. */
class BlockLibraryTest {
  private static final BlockLibrary LIBRARY = BlockLibrary.load();

  static Stream<Block> blocks() {
    return LIBRARY.blocks().stream();
  }

  @Test
  void thereAreAtLeastFiftyBlocks() {
    assertTrue(LIBRARY.blocks().size() >= 50, LIBRARY.blocks().size() + " blocks");
  }

  @Test
  void noNameIsGivenTwice() {
    Set<String> names = new HashSet<>();
    for (Block block : LIBRARY.blocks()) {
      assertTrue(names.add(block.name().toLowerCase()), block.name());
      block.otherNames().forEach(name -> assertTrue(names.add(name.toLowerCase()), name));
    }
  }

  /** Apart from the names of the colours, no block is another one. */
  @Test
  void noBlockIsAnotherOneTurnedOrMirrored() {
    Designs designs = new Designs();
    for (Block block : LIBRARY.blocks()) {
      Map<String, String> numbers = new HashMap<>();
      block.pieces().forEach(piece -> numbers.putIfAbsent(piece.colour(), "colour " + numbers.size()));
      designs.add(block.motif(), Orientation.AS_DRAWN, new Colourway("numbers", numbers));
    }
    long families = designs.designs().stream().map(design -> design.family()).distinct().count();
    assertEquals(LIBRARY.blocks().size(), families);
  }

  /** The exact areas of the colours make up the block, and the drawing agrees with them. */
  @ParameterizedTest
  @MethodSource("blocks")
  void areasOfTheColoursMakeUpTheBlock(Block block) {
    ExactArea sum = block.shares().values().stream().reduce(ExactArea.NONE, ExactArea::plus);
    assertEquals(ExactArea.of(Rational.ONE), sum);
    assertEquals(block.shares().keySet(), block.motif().shares().keySet());
    block.motif().shares().forEach((colour, share) -> assertEquals(block.shares().get(colour).value(), share, 1e-9));
  }

  /** Piece counts of the common constructions, as handbooks of patchwork give them; from memory. */
  @ParameterizedTest
  @CsvSource({"Nine Patch,9", "Ohio Star,21", "Shoofly,13", "Friendship Star,13", "Churn Dash,17", "Pinwheel,8",
      "Broken Dishes,8", "Sawtooth Star,17", "Dutchman's Puzzle,24", "Card Trick,24", "Log Cabin,13", "Bear's Paw,45",
      "Jacob's Ladder,28", "Snail's Trail,20", "Drunkard's Path,32", "Fifty-four Forty or Fight,32", "Economy,9",
      "Double Nine Patch,49", "Barbara Frietchie Star,32"})
  void piecesAreAsManyAsInTheCommonConstruction(String name, int pieces) {
    assertEquals(pieces, LIBRARY.find(name).orElseThrow().pieces().size());
  }

  /** Shares that follow from the units: an Ohio Star has eight quarter squares and a centre. */
  @ParameterizedTest
  @CsvSource({"Ohio Star,star,1/3", "Variable Star,centre,2/9", "Nine Patch,dark,5/9", "Friendship Star,star,1/3",
      "Pinwheel,dark,1/2", "Sawtooth Star,star,1/2", "Card Trick,second card,1/6", "Churn Dash,dash,4/9",
      "Square in a Square,square,1/2", "Economy,centre,1/4", "Bear's Paw,paw,24/49", "Snail's Trail,dark,1/2",
      "Log Cabin,hearth,1/49", "Drunkard's Path,dark,1/2"})
  void sharesAreThoseOfTheUnits(String name, String colour, String share) {
    assertEquals(ExactArea.of(Rational.parse(share)), LIBRARY.find(name).orElseThrow().shares().get(colour));
  }

  /** Symmetry as one sees it in the block: turns that keep it, and mirrors. */
  @ParameterizedTest
  @CsvSource({"Ohio Star,4,4", "Churn Dash,4,4", "Bear's Paw,4,4", "Pinwheel,4,0", "Friendship Star,4,0",
      "Dutchman's Puzzle,4,0", "Clay's Choice,4,0", "Windmill,4,0", "Broken Dishes,2,2", "Bow Tie,2,2", "Spool,2,2",
      "Snail's Trail,2,0", "Jacob's Ladder,2,2", "Hourglass,2,2", "Card Trick,1,0", "Maple Leaf,1,1", "Cake Stand,1,1",
      "Log Cabin,1,1", "Attic Window,1,0", "Flying Geese,1,1", "Birds in the Air,1,1"})
  void symmetryIsComputed(String name, int turns, int mirrors) {
    Block block = LIBRARY.find(name).orElseThrow();
    assertEquals(turns, block.motif().rotationalOrder());
    assertEquals(turns + mirrors, block.motif().symmetries().size());
  }

  /** Four shapes of one card each in Card Trick: one and a half units, which no turn keeps for their colours alone. */
  @Test
  void cardTrickTurnsWhenItsCardsAreAlike() {
    Map<String, String> alike = Map.of("second card", "first card", "third card", "first card", "fourth card",
        "first card");
    Block cards = LIBRARY.find("Card Trick").orElseThrow();
    assertEquals(4, cards.motif().in(new Colourway("alike", alike)).rotationalOrder());
  }

  @Test
  void unitsAreCountedByKind() {
    Map<UnitKind, Integer> units = LIBRARY.find("Ohio Star").orElseThrow().units();
    assertEquals(Map.of(UnitKind.PLAIN, 5, UnitKind.QUARTER_SQUARE, 4), units);
    assertEquals(List.of("Eastern Star"), LIBRARY.find("ohio star").orElseThrow().otherNames());
  }
}
