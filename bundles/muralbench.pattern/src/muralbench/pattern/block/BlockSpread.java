// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.Messages;
import muralbench.pattern.motif.Motif;
import muralbench.pattern.symmetry.Rational;

/** A block on one tile or spread over so many tiles each way. */
public final class BlockSpread {
  private final Block block;
  private final int tiles;
  private final List<Motif> parts;

  private BlockSpread(Block block, int tiles, List<Motif> parts) {
    this.block = block;
    this.tiles = tiles;
    this.parts = parts;
  }

  /**
   * A unit of a block.
   *
   * @param column units from the left, from 0
   * @param row units from the bottom, from 0
   */
  public record UnitPlace(int column, int row) {}

  /**
   * Spreads a block.
   *
   * @param block the block
   * @param tiles how many tiles each way, at least 1
   */
  public static BlockSpread of(Block block, int tiles) {
    if (tiles < 1) {
      throw new IllegalArgumentException("a block lies on at least one tile");
    }
    List<Motif> parts = new ArrayList<>();
    double side = (double) block.grid() / tiles;
    for (int row = 0; row < tiles; row++) {
      for (int column = 0; column < tiles; column++) {
        Motif whole = block.motif();
        parts.add(tiles == 1 ? whole : whole.window(column * side, row * side, side, side));
      }
    }
    return new BlockSpread(block, tiles, List.copyOf(parts));
  }

  /** The block. */
  public Block block() {
    return block;
  }

  /** How many tiles each way. */
  public int tiles() {
    return tiles;
  }

  /** The drawing on one tile; column and row from 0 at the lower left. Always the same object. */
  public Motif part(int column, int row) {
    return parts.get(row * tiles + column);
  }

  /** The columns of units, and likewise rows, that an edge between tiles cuts; empty if units end at the edges. */
  public List<Integer> cutColumns() {
    List<Integer> cut = new ArrayList<>();
    for (int edge = 1; edge < tiles; edge++) {
      Rational at = Rational.of((long) edge * block.grid(), tiles);
      int unit = (int) at.floor();
      if (!at.whole() && !cut.contains(unit)) {
        cut.add(unit);
      }
    }
    return cut;
  }

  /** The units that the edges between tiles cut, from the bottom row up; empty if units end at the edges. */
  public List<UnitPlace> cutUnits() {
    List<Integer> cut = cutColumns();
    List<UnitPlace> places = new ArrayList<>();
    for (int row = 0; row < block.grid(); row++) {
      for (int column = 0; column < block.grid(); column++) {
        if (cut.contains(column) || cut.contains(row)) {
          places.add(new UnitPlace(column, row));
        }
      }
    }
    return places;
  }

  /** In plain words, whether units end at the edges of tiles, and which do not. */
  public String note() {
    Messages messages = Messages.of(BlockSpread.class);
    List<String> cut = cutColumns().stream().map(column -> Integer.toString(column + 1)).toList();
    if (cut.isEmpty()) {
      return messages.text("spread.fits", "grid", block.grid(), "tiles", tiles);
    }
    return messages.text("spread.cuts", "units", String.join(", ", cut), "grid", block.grid(), "tiles", tiles,
        "count", cutUnits().size());
  }
}
