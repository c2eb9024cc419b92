// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.pattern.motif.Colourway;
import muralbench.pattern.motif.Edge;
import muralbench.pattern.motif.Motif;
import muralbench.pattern.motif.Orientation;

/** A field of square tiles filled with blocks in one of the usual settings: for each tile what is painted on it. */
public final class BlockField {
  /** More tiles than this are refused. */
  public static final int MOST_TILES = 1_000_000;

  private final int columns;
  private final int rows;
  private final boolean onPoint;
  private final List<FieldTile> tiles;

  private BlockField(int columns, int rows, boolean onPoint, List<FieldTile> tiles) {
    this.columns = columns;
    this.rows = rows;
    this.onPoint = onPoint;
    this.tiles = List.copyOf(tiles);
  }

  /** Collects the tiles of one field. */
  private static final class Collector {
    private final List<FieldTile> tiles = new ArrayList<>();

    void block(BlockSpread spread, int left, int bottom, Orientation orientation, Colourway colourway) {
      int side = spread.tiles();
      Orientation back = orientation.inverse();
      for (int row = 0; row < side; row++) {
        for (int column = 0; column < side; column++) {
          Motif part = part(spread, column, row, back);
          tiles.add(new FieldTile(left + column, bottom + row, part, orientation, colourway, Set.of()));
        }
      }
    }

    void fill(Motif motif, Orientation orientation, int left, int bottom, int width, int height) {
      for (int row = bottom; row < bottom + height; row++) {
        for (int column = left; column < left + width; column++) {
          tiles.add(new FieldTile(column, row, motif, orientation, Colourway.AS_DRAWN, Set.of()));
        }
      }
    }
  }

  /** The part of a block that comes to a place within it, given the orientation that brings it back. */
  private static Motif part(BlockSpread spread, int column, int row, Orientation back) {
    // Twice the distance of tile middles from the middle of the block, so that all numbers are whole.
    int x = 2 * column + 1 - spread.tiles();
    int y = 2 * row + 1 - spread.tiles();
    int fromX = back.alongX(x, y);
    int fromY = back.alongY(x, y);
    return spread.part((fromX + spread.tiles() - 1) / 2, (fromY + spread.tiles() - 1) / 2);
  }

  /**
   * Blocks side by side.
   *
   * @param spread the block on its tiles
   * @param filling how the blocks are turned
   * @param across blocks across, at least 1
   * @param up blocks up, at least 1
   * @throws InputException if the field has no block or too many tiles
   */
  public static BlockField edgeToEdge(BlockSpread spread, Filling filling, int across, int up) throws InputException {
    return sashed(spread, filling, Motif.plain("", "none"), Motif.plain("", "none"), 0, across, up);
  }

  /**
   * Blocks with strips between and around them, and a cornerstone where strips cross.
   *
   * @param sash the drawing on each tile of a level strip; upright strips have it turned a quarter
   * @param cornerstone the drawing on each tile where strips cross
   * @param width width of the strips in tiles, 0 for none
   * @throws InputException as {@link #edgeToEdge}
   */
  public static BlockField sashed(BlockSpread spread, Filling filling, Motif sash, Motif cornerstone, int width,
      int across, int up) throws InputException {
    int pitch = spread.tiles() + width;
    check(across, up, (long) (across * pitch + width) * (up * pitch + width));
    Collector collector = new Collector();
    for (int row = 0; row <= up; row++) {
      for (int column = 0; column <= across; column++) {
        int left = column * pitch;
        int bottom = row * pitch;
        collector.fill(cornerstone, Orientation.AS_DRAWN, left, bottom, width, width);
        if (column < across) {
          collector.fill(sash, Orientation.AS_DRAWN, left + width, bottom, spread.tiles(), width);
        }
        if (row < up) {
          collector.fill(sash, Orientation.QUARTER_TURN, left, bottom + width, width, spread.tiles());
        }
        if (row < up && column < across) {
          collector.block(spread, left + width, bottom + width, filling.orientation(column, row),
              filling.colourway(column, row));
        }
      }
    }
    return new BlockField(across * pitch + width, up * pitch + width, false, collector.tiles);
  }

  /**
   * Blocks in turn with plain ones, the first at the lower left. The filling runs along the diagonals, on which the
   * blocks are neighbours; for p4m the block needs an upright mirror too.
   *
   * @param plain the drawing on each tile of a plain block
   * @throws InputException as {@link #edgeToEdge}
   */
  public static BlockField alternate(BlockSpread spread, Filling filling, Motif plain, int across, int up)
      throws InputException {
    int side = spread.tiles();
    check(across, up, (long) across * up * side * side);
    filling.checkOnDiagonals(spread.block());
    Collector collector = new Collector();
    for (int row = 0; row < up; row++) {
      for (int column = 0; column < across; column++) {
        if ((column + row) % 2 == 0) {
          int along = (column + row) / 2;
          int aside = (row - column) / 2;
          collector.block(spread, column * side, row * side, filling.onDiagonals(along, aside),
              filling.colourway(along, aside));
        } else {
          collector.fill(plain, Orientation.AS_DRAWN, column * side, row * side, side, side);
        }
      }
    }
    return new BlockField(across * side, up * side, false, collector.tiles);
  }

  /**
   * Blocks with one-tile borders around them, the innermost first.
   *
   * @param rings the borders
   * @throws InputException as {@link #edgeToEdge}
   */
  public static BlockField medallion(BlockSpread spread, Filling filling, int across, int up, List<Ring> rings)
      throws InputException {
    int width = across * spread.tiles();
    int height = up * spread.tiles();
    int around = rings.size();
    check(across, up, (width + 2L * around) * (height + 2L * around));
    Collector collector = new Collector();
    for (int row = 0; row < up; row++) {
      for (int column = 0; column < across; column++) {
        collector.block(spread, around + column * spread.tiles(), around + row * spread.tiles(),
            filling.orientation(column, row), filling.colourway(column, row));
      }
    }
    for (int i = 0; i < around; i++) {
      ring(collector, rings.get(i), around - 1 - i, width + 2 * i, height + 2 * i);
    }
    return new BlockField(width + 2 * around, height + 2 * around, false, collector.tiles);
  }

  private static void ring(Collector collector, Ring ring, int start, int width, int height) {
    int right = start + width + 1;
    int top = start + height + 1;
    collector.fill(ring.side, Orientation.AS_DRAWN, start + 1, start, width, 1);
    collector.fill(ring.side, Orientation.QUARTER_TURN, right, start + 1, 1, height);
    collector.fill(ring.side, Orientation.HALF_TURN, start + 1, top, width, 1);
    collector.fill(ring.side, Orientation.THREE_QUARTER_TURN, start, start + 1, 1, height);
    collector.fill(ring.corner, Orientation.AS_DRAWN, start, start, 1, 1);
    collector.fill(ring.corner, Orientation.QUARTER_TURN, right, start, 1, 1);
    collector.fill(ring.corner, Orientation.HALF_TURN, right, top, 1, 1);
    collector.fill(ring.corner, Orientation.THREE_QUARTER_TURN, start, top, 1, 1);
  }

  /**
   * A border one tile wide.
   *
   * @param side the drawing on the tiles of the lower side; it turns with the sides
   * @param corner the drawing on the lower left corner; it turns with the corners
   */
  public record Ring(Motif side, Motif corner) {}

  /**
   * Blocks on their corners. The tiles lie diagonally; the field is as wide as {@code across} blocks from corner to
   * corner and as high as {@code up}. Between the blocks of a row come those of the next, or plain ones; at the sides
   * plain halves and in the corners of the field plain quarters.
   *
   * @param plain the drawing on each plain tile
   * @param alternate whether the blocks between are plain
   * @throws InputException as {@link #edgeToEdge}
   */
  public static BlockField onPoint(BlockSpread spread, Filling filling, Motif plain, boolean alternate, int across,
      int up) throws InputException {
    int side = spread.tiles();
    check(across, up, (long) across * up * side * side * 2);
    if (alternate) {
      filling.checkOnDiagonals(spread.block());
    }
    List<FieldTile> tiles = new ArrayList<>();
    for (int p = -1; p < across + up; p++) {
      for (int q = -across; q <= up; q++) {
        // The middle of the block in half diagonals from the lower left corner of the field.
        int x = p - q + 1;
        int y = p + q + 1;
        boolean main = Math.floorMod(x, 2) == 1;
        boolean inside = x > 0 && y > 0 && x < 2 * across && y < 2 * up;
        boolean shown = inside && (main || !alternate);
        if (x >= 0 && y >= 0 && x <= 2 * across && y <= 2 * up) {
          int along = Math.floorDiv(p + q, 2);
          int aside = Math.floorDiv(q - p, 2);
          FieldTile block = !shown ? new FieldTile(p, q, plain, Orientation.AS_DRAWN, Colourway.AS_DRAWN, Set.of())
              : new FieldTile(p, q, null, alternate ? filling.onDiagonals(along, aside) : filling.orientation(p, q),
                  alternate ? filling.colourway(along, aside) : filling.colourway(p, q), Set.of());
          onPoint(tiles, spread, block, across, up);
        }
      }
    }
    return new BlockField(across, up, true, tiles);
  }

  /** Adds the tiles of one block, given with its place in blocks; without a motif its parts are those of the spread. */
  private static void onPoint(List<FieldTile> tiles, BlockSpread spread, FieldTile block, int across, int up) {
    int side = spread.tiles();
    Orientation back = block.orientation().inverse();
    for (int t = 0; t < side; t++) {
      for (int s = 0; s < side; s++) {
        int u = block.column() * side + s;
        int v = block.row() * side + t;
        // The middle of the tile in half diagonals of a tile.
        int x = u - v + side;
        int y = u + v + 1;
        if (x >= 0 && y >= 0 && x <= 2 * across * side && y <= 2 * up * side) {
          Set<Edge> cut = EnumSet.noneOf(Edge.class);
          addIf(cut, Edge.LEFT, x == 0);
          addIf(cut, Edge.RIGHT, x == 2 * across * side);
          addIf(cut, Edge.BOTTOM, y == 0);
          addIf(cut, Edge.TOP, y == 2 * up * side);
          Motif motif = block.motif() == null ? part(spread, s, t, back) : block.motif();
          tiles.add(new FieldTile(u, v, motif, block.orientation(), block.colourway(), cut));
        }
      }
    }
  }

  private static void addIf(Set<Edge> edges, Edge edge, boolean cuts) {
    if (cuts) {
      edges.add(edge);
    }
  }

  private static void check(int across, int up, long count) throws InputException {
    Messages messages = Messages.of(BlockField.class);
    if (across < 1 || up < 1) {
      throw new InputException("", messages.text("field.size", "across", across, "up", up),
          messages.text("field.size.remedy"));
    }
    if (count > MOST_TILES || across > MOST_TILES || up > MOST_TILES) {
      throw new InputException("", messages.text("field.large", "count", count),
          messages.text("field.large.remedy", "most", MOST_TILES));
    }
  }

  /** Tiles across; in a field on point blocks across, from corner to corner. */
  public int columns() {
    return columns;
  }

  /** Tiles up; in a field on point blocks up, from corner to corner. */
  public int rows() {
    return rows;
  }

  /** Whether the tiles lie diagonally. */
  public boolean onPoint() {
    return onPoint;
  }

  /** All tiles, each place once. */
  public List<FieldTile> tiles() {
    return tiles;
  }
}
