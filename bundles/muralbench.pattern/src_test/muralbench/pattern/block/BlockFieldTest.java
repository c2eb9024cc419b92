// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import muralbench.base.InputException;
import muralbench.pattern.motif.Colourway;
import muralbench.pattern.motif.Design;
import muralbench.pattern.motif.Designs;
import muralbench.pattern.motif.Hand;
import muralbench.pattern.motif.Motif;
import muralbench.pattern.motif.Orientation;
import muralbench.pattern.symmetry.Cell;
import muralbench.pattern.symmetry.Isometry;
import muralbench.pattern.symmetry.Patch;
import muralbench.pattern.symmetry.SymmetryFinder;
import muralbench.pattern.symmetry.WallpaperGroup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Fields of blocks: the pattern that comes out has the group that was asked for, found from the pattern alone. */
class BlockFieldTest {
  private static final String COLOURS = "colour A light\ncolour B dark\ncolour C red\ncolour D green\n";
  /** A block without any symmetry. */
  private static final Block LOPSIDED = block("block L\ngrid 3\n" + COLOURS + "A/B C C\nA A B\nD A A");
  /** A block with one mirror, in the rising diagonal, and one with all mirrors. */
  private static final Block KITE = block("block K\ngrid 2\n" + COLOURS + "A B\nC A");
  private static final Block KITE_MIRRORED = block("block K\ngrid 2\n" + COLOURS + "B C\nA B");
  private static final Block FRAME = block("block F\ngrid 3\n" + COLOURS + "B A B\nA C A\nB A B");

  static Stream<WallpaperGroup> groups() {
    return Filling.squareGroups().stream();
  }

  @ParameterizedTest
  @MethodSource("groups")
  void theFieldHasTheGroupThatWasAskedFor(WallpaperGroup group) throws InputException {
    for (int tiles = 1; tiles <= 2; tiles++) {
      Block block = group == WallpaperGroup.P4M ? KITE_MIRRORED : LOPSIDED;
      Filling filling = Filling.of(group, List.of(), block);
      BlockField field = BlockField.edgeToEdge(BlockSpread.of(block, tiles), filling, 4, 4);
      assertEquals(group, group(field, 4 * tiles));
    }
  }

  @ParameterizedTest
  @MethodSource("groups")
  void blocksInTurnWithPlainOnesKeepTheGroup(WallpaperGroup group) throws InputException {
    Block block = group == WallpaperGroup.P4M ? FRAME : LOPSIDED;
    Filling filling = Filling.of(group, List.of(), block);
    BlockField field = BlockField.alternate(BlockSpread.of(block, 1), filling, Motif.plain("Plain", "white"), 8, 8);
    assertEquals(group, group(field, 8));
  }

  private static WallpaperGroup group(BlockField field, int side) {
    List<Patch> patches = new ArrayList<>();
    for (FieldTile tile : field.tiles()) {
      double size = tile.motif().width();
      // All tiles of these fields have parts of one size, which is the unit here; plain ones have no patches.
      patches.addAll(tile.motif().in(tile.orientation()).patches(Isometry.shift(tile.column() * size,
          tile.row() * size)));
    }
    double unit = field.tiles().get(0).motif().width() * side;
    return SymmetryFinder.inPlane(Cell.upright(unit, unit), patches).orElseThrow().group();
  }

  @Test
  void p4mNeedsABlockWithADiagonalMirror() {
    InputException refusal = assertThrows(InputException.class,
        () -> Filling.of(WallpaperGroup.P4M, List.of(), LOPSIDED));
    assertTrue(refusal.getMessage().contains("Choose pmm, p4 or p4g"), refusal.getMessage());
  }

  @Test
  void groupsWithThirdTurnsAreRefused() {
    InputException refusal = assertThrows(InputException.class,
        () -> Filling.of(WallpaperGroup.P31M, List.of(), LOPSIDED));
    assertTrue(refusal.getMessage().contains("p31m needs hexagons"), refusal.getMessage());
    assertTrue(refusal.getMessage().contains("pmm, pmg"), refusal.getMessage());
  }

  /** Four parts, each in as many hands as the group has: p4 only turns, p4g mirrors too. */
  @ParameterizedTest
  @CsvSource({"P1,4,0", "P4,4,0", "PM,4,4", "P4G,4,4"})
  void aFieldNeedsTheHandsOfItsGroup(WallpaperGroup group, int drawn, int mirrored) throws InputException {
    Block block = block("block X\ngrid 4\n" + COLOURS + "A/B C C C:A:B:D\nA A B A\nD A A A/B\nA:B:C:D A B\\D D");
    Designs designs = new Designs();
    BlockField field = BlockField.edgeToEdge(BlockSpread.of(block, 2), Filling.of(group, List.of(), block), 8, 8);
    field.tiles().forEach(tile -> designs.add(tile.motif(), tile.orientation(), tile.colourway()));
    List<Hand> hands = designs.designs().stream().map(Design::hand).toList();
    assertEquals(drawn, hands.stream().filter(hand -> hand == Hand.AS_DRAWN).count());
    assertEquals(mirrored, hands.stream().filter(hand -> hand == Hand.MIRRORED).count());
    assertEquals(256, designs.designs().stream().mapToInt(designs::count).sum());
  }

  @Test
  void colourwaysAlternateAlongTheDiagonals() throws InputException {
    Colourway night = new Colourway("night", Map.of("light", "blue"));
    Filling filling = Filling.of(WallpaperGroup.P1, List.of(Colourway.AS_DRAWN, night), FRAME);
    BlockField field = BlockField.edgeToEdge(BlockSpread.of(FRAME, 1), filling, 4, 4);
    field.tiles().forEach(tile -> assertEquals((tile.column() + tile.row()) % 2 == 1, tile.colourway() == night));
  }

  @Test
  void sashesRunBetweenAndAroundTheBlocks() throws InputException {
    Motif sash = Motif.plain("Sash", "grey");
    Motif stone = Motif.plain("Stone", "black");
    BlockField field = BlockField.sashed(BlockSpread.of(FRAME, 3), Filling.plain(), sash, stone, 1, 4, 2);
    assertEquals(17, field.columns());
    assertEquals(9, field.rows());
    assertEquals(5 * 3, field.tiles().stream().filter(tile -> tile.motif() == stone).count());
    assertEquals(3 * (4 * 3 + 5 * 2), field.tiles().stream().filter(tile -> tile.motif() == sash).count());
    assertEveryPlaceOnce(field);
  }

  @Test
  void bordersTurnRoundTheMedallion() throws InputException {
    BlockField.Ring ring = new BlockField.Ring(KITE.motif(), LOPSIDED.motif());
    BlockField field = BlockField.medallion(BlockSpread.of(FRAME, 3), Filling.plain(), 1, 1, List.of(ring, ring));
    assertEquals(7, field.columns());
    assertEveryPlaceOnce(field);
    assertEquals(Orientation.AS_DRAWN, at(field, 3, 0).orientation());
    assertEquals(Orientation.QUARTER_TURN, at(field, 6, 3).orientation());
    assertEquals(Orientation.HALF_TURN, at(field, 6, 6).orientation());
    assertEquals(LOPSIDED.motif(), at(field, 1, 5).motif());
  }

  private static FieldTile at(BlockField field, int column, int row) {
    return field.tiles().stream().filter(tile -> tile.column() == column && tile.row() == row).findFirst()
        .orElseThrow();
  }

  private static void assertEveryPlaceOnce(BlockField field) {
    Set<List<Integer>> places = new HashSet<>();
    field.tiles().forEach(tile -> places.add(List.of(tile.column(), tile.row())));
    assertEquals(field.tiles().size(), places.size());
    assertEquals(field.columns() * field.rows(), places.size());
  }

  /** Whole, half and quarter tiles make up the field: two tiles' areas for each tile of a block and diagonal. */
  @ParameterizedTest
  @CsvSource({"1,1,1", "3,2,1", "2,3,2", "4,4,3"})
  void tilesOnPointMakeUpTheField(int across, int up, int tiles) throws InputException {
    Motif plain = Motif.plain("Plain", "white");
    for (boolean alternate : new boolean[] {true, false}) {
      BlockSpread spread = BlockSpread.of(FRAME, tiles);
      BlockField field = BlockField.onPoint(spread, Filling.plain(), plain, alternate, across, up);
      double area = field.tiles().stream().mapToDouble(tile -> Math.pow(0.5, tile.cutBy().size())).sum();
      assertEquals(2.0 * across * up * tiles * tiles, area, 1e-9);
      long plains = field.tiles().stream().filter(tile -> tile.motif() == plain && tile.cutBy().isEmpty()).count();
      long blocks = alternate ? across * up : across * up + (across - 1) * (up - 1);
      assertEquals(blocks * tiles * tiles, field.tiles().stream().filter(tile -> tile.motif() != plain).count());
      assertTrue(alternate ? plains >= (long) (across - 1) * (up - 1) * tiles * tiles : plains >= 0);
    }
  }

  /** A field on point has its group too: turned back, its whole blocks repeat as they would upright. */
  @Test
  void blocksOnPointAreTurnedByTheFilling() throws InputException {
    Filling filling = Filling.of(WallpaperGroup.P4, List.of(), LOPSIDED);
    BlockField field = BlockField.onPoint(BlockSpread.of(LOPSIDED, 1), filling, Motif.plain("P", "white"), false, 4, 4);
    field.tiles().stream().filter(tile -> tile.motif() == LOPSIDED.motif())
        .forEach(tile -> assertEquals(filling.orientation(tile.column(), tile.row()), tile.orientation()));
  }

  @Test
  void fieldsWithoutBlocksOrTooLargeAreRefused() {
    BlockSpread spread = BlockSpread.of(FRAME, 3);
    assertThrows(InputException.class, () -> BlockField.edgeToEdge(spread, Filling.plain(), 0, 2));
    assertThrows(InputException.class, () -> BlockField.edgeToEdge(spread, Filling.plain(), 2000, 2000));
  }

  private static Block block(String text) {
    try {
      return BlockText.parse("test", text).get(0);
    } catch (InputException e) {
      throw new AssertionError(e);
    }
  }
}
