// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.Map;

/**
 * The laying pattern chosen for a panel.
 *
 * @param kind identifier of a registered bond, such as {@code grid}
 * @param offset share of the module by which each course is shifted against the course below, accumulating
 * @param rotation turn about the origin, degrees counter-clockwise
 * @param settings further parameters of contributed bonds, by name
 */
public record BondSpec(String kind, double offset, double rotation, Map<String, String> settings) {
  public BondSpec {
    settings = Map.copyOf(settings);
  }

  /** A plain grid. */
  public static BondSpec grid() {
    return new BondSpec("grid", 0, 0, Map.of());
  }
}
