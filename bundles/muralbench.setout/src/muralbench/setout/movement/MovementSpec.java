// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.movement;

import java.util.List;
import muralbench.setout.geometry.Box;

/** Which movement joints a panel is to have. */
public sealed interface MovementSpec {
  /** None. */
  record None() implements MovementSpec {}

  /**
   * As few as a rule allows, on straight joints of the bond.
   *
   * @param rule how far apart and how wide
   * @param swing how far the temperature of the tile's surface swings in a year, °F
   * @param keepOut what no joint runs through while another place will do, in the wall plane
   */
  record ByRule(MovementRule rule, double swing, List<Box> keepOut) implements MovementSpec {
    public ByRule {
      keepOut = List.copyOf(keepOut);
    }

    /** With nothing to keep out of. */
    public ByRule(MovementRule rule, double swing) {
      this(rule, swing, List.of());
    }
  }

  /** Given ones, each on the straight joint of the bond that is nearest to its place before the joints are widened. */
  record Given(List<MovementJoint> joints) implements MovementSpec {
    public Given {
      joints = List.copyOf(joints);
    }
  }
}
