// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import java.util.List;
import muralbench.setout.geometry.Vec;

/**
 * Names the group of a set of operations in the smallest cell: by the highest turn, then by which of its mirror
 * matrices are mirrors and which only glides, and how they stand to the lattice. The usual tree of decisions, as in
 * D. Schattschneider, The plane symmetry groups, American Mathematical Monthly 85 (1978).
 */
final class Classifier {
  private Classifier() {}

  static WallpaperGroup wallpaper(Cell cell, List<CellOperation> operations) {
    int turn = operations.stream().filter(CellOperation::turns).mapToInt(CellOperation::order).max().orElse(1);
    List<CellOperation> reflecting = operations.stream().filter(operation -> !operation.turns()).toList();
    return switch (turn) {
      case 1 -> single(reflecting);
      case 2 -> half(reflecting);
      case 3 -> third(cell, reflecting);
      case 4 -> quarter(reflecting);
      default -> reflecting.isEmpty() ? WallpaperGroup.P6 : WallpaperGroup.P6M;
    };
  }

  private static WallpaperGroup single(List<CellOperation> reflecting) {
    if (reflecting.isEmpty()) {
      return WallpaperGroup.P1;
    }
    if (!reflecting.get(0).square()) {
      return WallpaperGroup.CM;
    }
    return reflecting.get(0).mirror() ? WallpaperGroup.PM : WallpaperGroup.PG;
  }

  private static WallpaperGroup half(List<CellOperation> reflecting) {
    if (reflecting.isEmpty()) {
      return WallpaperGroup.P2;
    }
    if (!reflecting.get(0).square()) {
      return WallpaperGroup.CMM;
    }
    return switch ((int) reflecting.stream().filter(CellOperation::mirror).count()) {
      case 0 -> WallpaperGroup.PGG;
      case 1 -> WallpaperGroup.PMG;
      default -> WallpaperGroup.PMM;
    };
  }

  private static WallpaperGroup third(Cell cell, List<CellOperation> reflecting) {
    if (reflecting.isEmpty()) {
      return WallpaperGroup.P3;
    }
    // In p31m the mirrors run along the shortest shifts, in p3m1 across them.
    CellOperation mirror = reflecting.get(0);
    Vec a = new Vec(1, 0);
    Vec b = new Vec(0, 1);
    boolean along = List.of(a, b, a.plus(b)).stream().anyMatch(edge -> mirror.image(edge).distance(edge) < 1e-9);
    return along ? WallpaperGroup.P31M : WallpaperGroup.P3M1;
  }

  private static WallpaperGroup quarter(List<CellOperation> reflecting) {
    if (reflecting.isEmpty()) {
      return WallpaperGroup.P4;
    }
    boolean onMirrors = reflecting.stream().filter(CellOperation::square).allMatch(CellOperation::mirror);
    return onMirrors ? WallpaperGroup.P4M : WallpaperGroup.P4G;
  }

  static FriezeGroup frieze(List<CellOperation> operations) {
    CellOperation upright = with(operations, -1, 1);
    CellOperation lying = with(operations, 1, -1);
    boolean turns = with(operations, -1, -1) != null;
    boolean glides = lying != null && Math.abs(lying.shift().x() - 0.5) < 0.25;
    if (turns) {
      return lying == null ? FriezeGroup.SPINNING_HOP : glides ? FriezeGroup.SPINNING_SIDLE : FriezeGroup.SPINNING_JUMP;
    }
    if (lying != null) {
      return glides ? FriezeGroup.STEP : FriezeGroup.JUMP;
    }
    return upright == null ? FriezeGroup.HOP : FriezeGroup.SIDLE;
  }

  private static CellOperation with(List<CellOperation> operations, int xx, int yy) {
    return operations.stream().filter(operation -> operation.matrix().xx() == xx && operation.matrix().yy() == yy)
        .findFirst().orElse(null);
  }
}
