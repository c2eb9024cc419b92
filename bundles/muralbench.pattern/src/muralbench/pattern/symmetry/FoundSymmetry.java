// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import java.util.List;

/**
 * What a drawing maps on to itself.
 *
 * @param cell the smallest cell with which the drawing repeats, its edges as short as can be
 * @param operations the movements that keep the drawing, one for all that differ by cells
 * @param group the group they make up
 */
public record FoundSymmetry(Cell cell, List<Isometry> operations, WallpaperGroup group) {
  public FoundSymmetry {
    operations = List.copyOf(operations);
  }
}
