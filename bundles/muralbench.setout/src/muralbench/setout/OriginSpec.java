// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.Optional;
import muralbench.setout.geometry.Vec;

/** Where the laying pattern starts. */
public sealed interface OriginSpec {
  /**
   * The set-out chooses, so that opposite cuts are equal and as wide as can be.
   *
   * @param focus a point in the wall plane that the centre of a face or a crossing of joints is laid on; none to leave
   *     the choice free
   */
  record Balanced(Optional<Vec> focus) implements OriginSpec {
    /** Chosen freely. */
    public Balanced() {
      this(Optional.empty());
    }
  }

  /**
   * A given start.
   *
   * @param corner lower left corner of one tile face, in the wall plane
   */
  record At(Vec corner) implements OriginSpec {}
}
