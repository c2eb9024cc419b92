// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

/**
 * The board of a panel that can be taken down.
 *
 * @param material {@code fibre-cement-on-plywood}, {@code fibre-cement}, {@code plywood} or {@code other}
 * @param thickness mm, 0 for the usual one
 * @param density kg/m³, 0 for the usual one of the material
 * @param reveal how far the board stands out beyond the outline of the panel, mm; below 0 where it stays behind
 * @param edge what guards the edges of the tile: {@code none}, {@code trim} or {@code frame}
 * @param hangerCapacity what one hanging point may carry by the word of its maker, kg, 0 when not known
 */
public record BoardSpec(String material, double thickness, double density, double reveal, String edge,
    double hangerCapacity) {
  /** Fibre cement on plywood, flush with the outline, its edges bare. */
  public static BoardSpec usual() {
    return new BoardSpec("fibre-cement-on-plywood", 0, 0, 0, "none", 0);
  }
}
