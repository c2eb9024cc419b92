// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.pattern.motif.Motif;
import muralbench.pattern.motif.Region;

/**
 * A geometric pattern block: a square of so many units each way, made up of coloured pieces that cover it without gap
 * or overlap. Immutable.
 */
public final class Block {
  private final String name;
  private final List<String> otherNames;
  private final int grid;
  private final List<BlockPiece> pieces;
  private final Map<UnitKind, Integer> units;
  private final Motif motif;

  private Block(String name, List<String> otherNames, int grid, List<BlockPiece> pieces, Map<UnitKind, Integer> units,
      Motif motif) {
    this.name = name;
    this.otherNames = otherNames;
    this.grid = grid;
    this.pieces = pieces;
    this.units = units;
    this.motif = motif;
  }

  /**
   * A block, checked.
   *
   * @param name its name, not empty
   * @param otherNames other names it goes by
   * @param grid units each way, at least 1
   * @param pieces its pieces
   * @param units how many units of each kind it has
   * @throws InputException if a piece leaves the block, pieces overlap or a part is not covered, saying where
   */
  static Block of(String name, List<String> otherNames, int grid, List<BlockPiece> pieces,
      Map<UnitKind, Integer> units) throws InputException {
    new BlockChecks(name, grid).check(pieces);
    List<Region> regions = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      regions.add(Region.of("piece " + (i + 1), pieces.get(i).colour(), pieces.get(i).contour()));
    }
    Motif motif = Motif.of(name, grid, grid, 1, pieces.get(0).colour(), regions, List.of());
    return new Block(name, List.copyOf(otherNames), grid, List.copyOf(pieces), Map.copyOf(units), motif);
  }

  /** Its name. */
  public String name() {
    return name;
  }

  /** Other names it goes by. */
  public List<String> otherNames() {
    return otherNames;
  }

  /** Units each way. */
  public int grid() {
    return grid;
  }

  /** Its pieces, as the block is made up. */
  public List<BlockPiece> pieces() {
    return pieces;
  }

  /** How many units of each kind it has; kinds it does not have are left out. */
  public Map<UnitKind, Integer> units() {
    return units;
  }

  /** Each colour with its share of the block, exact, in the order in which the colours first appear; together 1. */
  public Map<String, ExactArea> shares() {
    Map<String, ExactArea> shares = new LinkedHashMap<>();
    for (BlockPiece piece : pieces) {
      shares.merge(piece.colour(), piece.area().over((long) grid * grid), ExactArea::plus);
    }
    return shares;
  }

  /** The block as a drawing on one tile, a unit of the drawing for each unit of the block. */
  public Motif motif() {
    return motif;
  }

  @Override
  public String toString() {
    return name;
  }
}
