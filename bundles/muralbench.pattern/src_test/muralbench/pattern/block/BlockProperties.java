// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import muralbench.base.InputException;
import muralbench.pattern.motif.Designs;
import muralbench.pattern.motif.Orientation;
import muralbench.pattern.symmetry.Rational;
import muralbench.pattern.symmetry.WallpaperGroup;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Blocks of random units. */
class BlockProperties {
  private static final List<String> UNITS = List.of("A", "B", "C", "A/B", "B\\C", "A:B:C:B", "A/B:C", "C:B/A", "A\\B:C",
      "A:C\\B", "A-B-C", "A|B", "<A>B", "sw(A)B", "ne(C)A");

  @Property(tries = 100)
  void unitsOfAllKindsCoverTheBlock(@ForAll int seed, @ForAll @IntRange(min = 1, max = 6) int grid)
      throws InputException {
    Block block = BlockText.parse("test", text(new Random(seed), grid, "")).get(0);
    ExactArea sum = block.shares().values().stream().reduce(ExactArea.NONE, ExactArea::plus);
    assertEquals(ExactArea.of(Rational.ONE), sum);
    assertEquals(grid * grid, block.units().values().stream().mapToInt(Integer::intValue).sum());
  }

  @Property(tries = 60)
  void aPieceTooManyIsRefused(@ForAll int seed, @ForAll @IntRange(min = 1, max = 6) int grid) {
    Random random = new Random(seed);
    int x = random.nextInt(grid);
    String more = "shape A " + x + "," + x + " " + (x + 1) + "," + x + " " + (x + 1) + "," + (x + 1);
    assertThrows(InputException.class, () -> BlockText.parse("test", text(random, grid, more)));
  }

  /** A field never needs more designs than the block has parts, twice that with mirrors. */
  @Property(tries = 40)
  void aFieldNeedsNoMoreDesignsThanPartsAndHands(@ForAll int seed, @ForAll @IntRange(min = 1, max = 3) int tiles)
      throws InputException {
    Random random = new Random(seed);
    Block block = BlockText.parse("test", text(random, 3, "")).get(0);
    WallpaperGroup group = Filling.squareGroups().get(random.nextInt(10));
    Designs designs = new Designs();
    BlockField field = BlockField.edgeToEdge(BlockSpread.of(block, tiles), Filling.of(group, List.of(), block), 4, 4);
    field.tiles().forEach(tile -> designs.add(tile.motif(), tile.orientation(), tile.colourway()));
    boolean turnsOnly = List.of(WallpaperGroup.P1, WallpaperGroup.P2, WallpaperGroup.P4).contains(group);
    assertEquals(true, designs.designs().size() <= tiles * tiles * (turnsOnly ? 1 : 2));
    assertEquals(16 * tiles * tiles, designs.designs().stream().mapToInt(designs::count).sum());
    // What is painted and turned is what the field shows.
    FieldTile tile = field.tiles().get(random.nextInt(field.tiles().size()));
    Orientation turn = designs.add(tile.motif(), tile.orientation(), tile.colourway()).turn();
    assertEquals(false, turn.mirrored());
  }

  private static String text(Random random, int grid, String more) {
    StringBuilder text = new StringBuilder("block R\ngrid " + grid + "\ncolour A a\ncolour B b\ncolour C c\n");
    for (int row = 0; row < grid; row++) {
      for (int column = 0; column < grid; column++) {
        text.append(UNITS.get(random.nextInt(UNITS.size()))).append(' ');
      }
      text.append('\n');
    }
    return text + more;
  }
}
