// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import muralbench.setout.geometry.Vec;

/** Where the laying pattern starts. */
public sealed interface OriginSpec {
  /** The set-out chooses, so that opposite cuts are equal and as wide as can be. */
  record Balanced() implements OriginSpec {}

  /**
   * A given start.
   *
   * @param corner lower left corner of one tile face, in the wall plane
   */
  record At(Vec corner) implements OriginSpec {}
}
