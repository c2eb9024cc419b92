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
 * @param tileClass {@code natural}, {@code calibrated}, {@code rectified} or {@code not-known}
 * @param warpage along the longest edge as measured, mm, negative when not known
 * @param expansion coefficient of linear thermal expansion, millionths per °C, 0 when not known
 */
public record TileSpec(String id, double width, double height, double thickness, double facialVariation,
    double waterAbsorption, String tileClass, double warpage, double expansion) {
  /** The class of a tile of which it is not known. */
  public static final String NOT_KNOWN = "not-known";

  /** A tile of which class, warpage and expansion are not known. */
  public TileSpec(String id, double width, double height, double thickness, double facialVariation,
      double waterAbsorption) {
    this(id, width, height, thickness, facialVariation, waterAbsorption, NOT_KNOWN, -1, 0);
  }

  /** This tile with another class and warpage. */
  public TileSpec withClass(String other, double warped) {
    return new TileSpec(id, width, height, thickness, facialVariation, waterAbsorption, other, warped, expansion);
  }
}
