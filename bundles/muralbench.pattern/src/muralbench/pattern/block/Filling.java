// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.block;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.pattern.motif.Colourway;
import muralbench.pattern.motif.Orientation;
import muralbench.pattern.symmetry.Cell;
import muralbench.pattern.symmetry.Operation;
import muralbench.pattern.symmetry.Rational;
import muralbench.pattern.symmetry.WallpaperGroup;
import muralbench.setout.geometry.Vec;

/**
 * How the blocks of a field are turned and mirrored so that together they have the symmetry of a wallpaper group, and
 * which colourway each has. A block takes the place of the part that the group repeats; its orientation is that of the
 * group's operation that carries the first block to it. Only the twelve groups without third turns fit squares.
 */
public final class Filling {
  /**
   * How a group lies on a grid of blocks.
   *
   * @param a first edge of the conventional cell, in blocks
   * @param b second edge
   * @param x where the middle of the first block lies, in the first edge
   * @param y where it lies in the second edge
   */
  private record Layout(Vec a, Vec b, Rational x, Rational y) {}

  private static final Map<WallpaperGroup, Layout> LAYOUTS = layouts();

  private final WallpaperGroup group;
  private final List<Colourway> colourways;

  private Filling(WallpaperGroup group, List<Colourway> colourways) {
    this.group = group;
    this.colourways = colourways;
  }

  private static Map<WallpaperGroup, Layout> layouts() {
    Map<WallpaperGroup, Layout> layouts = new EnumMap<>(WallpaperGroup.class);
    upright(layouts, WallpaperGroup.P1, 1, 1, Rational.of(1, 2), Rational.of(1, 2));
    upright(layouts, WallpaperGroup.P2, 1, 2, Rational.of(1, 2), Rational.of(1, 4));
    upright(layouts, WallpaperGroup.PM, 2, 1, Rational.of(1, 4), Rational.of(1, 2));
    upright(layouts, WallpaperGroup.PG, 1, 2, Rational.of(1, 2), Rational.of(1, 4));
    upright(layouts, WallpaperGroup.CM, 2, 2, Rational.of(1, 4), Rational.of(1, 4));
    upright(layouts, WallpaperGroup.PMM, 2, 2, Rational.of(1, 4), Rational.of(1, 4));
    upright(layouts, WallpaperGroup.PMG, 2, 2, Rational.of(1, 2), Rational.of(1, 4));
    upright(layouts, WallpaperGroup.PGG, 2, 2, Rational.of(1, 4), Rational.ZERO);
    upright(layouts, WallpaperGroup.CMM, 2, 4, Rational.of(1, 4), Rational.of(1, 8));
    upright(layouts, WallpaperGroup.P4, 2, 2, Rational.of(1, 4), Rational.of(1, 4));
    upright(layouts, WallpaperGroup.P4M, 2, 2, Rational.of(1, 4), Rational.of(1, 4));
    layouts.put(WallpaperGroup.P4G, new Layout(new Vec(2, 2), new Vec(-2, 2), Rational.of(1, 4), Rational.ZERO));
    return layouts;
  }

  private static void upright(Map<WallpaperGroup, Layout> layouts, WallpaperGroup group, int width, int height,
      Rational x, Rational y) {
    layouts.put(group, new Layout(new Vec(width, 0), new Vec(0, height), x, y));
  }

  /** The groups that fit square blocks. */
  public static List<WallpaperGroup> squareGroups() {
    return List.copyOf(LAYOUTS.keySet());
  }

  /** All blocks alike. */
  public static Filling plain() {
    return new Filling(WallpaperGroup.P1, List.of(Colourway.AS_DRAWN));
  }

  /**
   * A filling for a block.
   *
   * @param group the group
   * @param colourways the colourways along each diagonal in turn, at least one; several may lower the symmetry
   * @param block the block; p4m needs one with a mirror in the rising diagonal, since no smaller part is a square
   * @throws InputException if the group or the block does not fit
   */
  public static Filling of(WallpaperGroup group, List<Colourway> colourways, Block block) throws InputException {
    Messages messages = Messages.of(Filling.class);
    if (!LAYOUTS.containsKey(group)) {
      String groups = squareGroups().stream().map(WallpaperGroup::standardSymbol).collect(Collectors.joining(", "));
      throw new InputException(block.name(), messages.text("filling.hexagonal", "group", group.standardSymbol()),
          messages.text("filling.hexagonal.remedy", "groups", groups));
    }
    if (group == WallpaperGroup.P4M
        && !block.motif().symmetries().contains(Orientation.MIRRORED_THREE_QUARTER_TURN)) {
      throw new InputException(block.name(), messages.text("filling.mirror", "block", block.name()),
          messages.text("filling.mirror.remedy"));
    }
    return new Filling(group, colourways.isEmpty() ? List.of(Colourway.AS_DRAWN) : List.copyOf(colourways));
  }

  /** The group. */
  public WallpaperGroup group() {
    return group;
  }

  /** How a block lies; column and row of blocks from any first one, which lies as drawn. */
  public Orientation orientation(int column, int row) {
    Layout layout = LAYOUTS.get(group);
    long area = Math.round(layout.a.cross(layout.b));
    Rational x = layout.x.plus(Rational.of(Math.round(new Vec(column, row).cross(layout.b)), area));
    Rational y = layout.y.plus(Rational.of(Math.round(layout.a.cross(new Vec(column, row))), area));
    for (Operation operation : group.operations()) {
      if (x.minus(operation.mapX(layout.x, layout.y)).whole() && y.minus(operation.mapY(layout.x, layout.y)).whole()) {
        return Orientation.of(new Cell(layout.a, layout.b).isometry(operation));
      }
    }
    throw new IllegalStateException(group + " does not reach block " + column + ", " + row);
  }

  /** How a block lies if the grid of blocks is turned by 45 degrees, and the blocks are not. */
  Orientation onDiagonals(int along, int aside) {
    Orientation there = orientation(along, aside);
    // A mirror across the first edge of the grid is one in the falling diagonal of the blocks.
    return there.mirrored() ? Orientation.of(true, there.quarterTurns() + 1) : there;
  }

  void checkOnDiagonals(Block block) throws InputException {
    if (group == WallpaperGroup.P4M && !block.motif().symmetries().contains(Orientation.MIRRORED)) {
      Messages messages = Messages.of(Filling.class);
      throw new InputException(block.name(), messages.text("filling.upright", "block", block.name()),
          messages.text("filling.mirror.remedy"));
    }
  }

  /** The colourway of a block. */
  public Colourway colourway(int column, int row) {
    return colourways.get(Math.floorMod(column + row, colourways.size()));
  }
}
