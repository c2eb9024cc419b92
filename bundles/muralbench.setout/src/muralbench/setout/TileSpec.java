// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

/**
 * A kind of tile as the set-out sees it.
 *
 * @param id short name, unique in the mural
 * @param width work size across the face, mm, above 0
 * @param height work size up the face, mm, above 0
 * @param thickness mm, 0 when not known
 * @param facialVariation spread of facial size in the delivered tile, mm, 0 when not known
 * @param waterAbsorption percent by mass, negative when not known
 */
public record TileSpec(String id, double width, double height, double thickness, double facialVariation,
    double waterAbsorption) {}
