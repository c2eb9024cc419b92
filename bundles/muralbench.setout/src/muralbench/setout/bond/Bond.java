// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.setout.TileSpec;

/**
 * A laying pattern, such as a grid or a running bond. Implementations are stateless and may be called from any thread.
 * Other plug-ins add their own through the extension point {@code muralbench.extensions.bonds}.
 */
public interface Bond {
  /** Identifier, lower case with hyphens; what briefs and files call the pattern. */
  String kind();

  /** Name for people. */
  String label();

  /** The settings the pattern understands besides the offset; others are refused. */
  default List<BondSetting> settings() {
    return List.of();
  }

  /** The names of the {@link #settings}. */
  default List<String> settingNames() {
    return settings().stream().map(BondSetting::name).toList();
  }

  /**
   * Settings to begin with when a person chooses the bond for a panel; where none are needed, none.
   *
   * @param width of the box around the panel, mm
   * @param height of that box, mm
   * @param tile the tile of the panel
   * @param joint width of its joints, mm
   */
  default Map<String, String> start(double width, double height, TileSpec tile, double joint) {
    return Map.of();
  }

  /** Whether the offset makes a difference, so that a dialog asks for it. */
  default boolean takesOffset() {
    return true;
  }

  /** A request that shows the pattern well in a small picture. */
  default BondRequest sample() {
    return BondRequest.sample(100, 100, 0, Map.of());
  }

  /**
   * Lays the pattern over the whole plane. The pattern's coordinates have (0, 0) at the lower left corner of one face,
   * x along the courses and y across them; turning and placing on the wall is not the bond's business.
   *
   * @throws InputException naming the setting if a parameter cannot be used
   */
  Pattern lay(BondRequest request) throws InputException;
}
