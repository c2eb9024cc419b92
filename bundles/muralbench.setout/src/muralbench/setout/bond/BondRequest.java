// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.Map;
import muralbench.setout.TileSpec;

/**
 * What a bond is asked to lay.
 *
 * @param tile the field tile
 * @param joint width of the joint, mm, at least 0
 * @param offset shift of each course against the one below, as a share of the module
 * @param settings further parameters by name
 */
public record BondRequest(TileSpec tile, double joint, double offset, Map<String, String> settings) {
  public BondRequest {
    settings = Map.copyOf(settings);
  }

  /** A request for a picture: a tile of a size in mm with joints of 4 mm. */
  static BondRequest sample(double width, double height, double offset, Map<String, String> settings) {
    return new BondRequest(new TileSpec("sample", width, height, 0, 0, -1), 4, offset, settings);
  }
}
