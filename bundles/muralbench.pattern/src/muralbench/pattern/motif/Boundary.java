// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import muralbench.setout.geometry.Segment;

/**
 * A stretch between two colours, as long as it goes on along the same line, arc or curve between the same two.
 *
 * @param segment the stretch
 * @param closed whether it is a whole circle or ellipse, so that its start says nothing
 * @param left colour on its left as it is walked; empty for a line drawn within a colour
 * @param right colour on its right; empty for a line drawn within a colour
 */
record Boundary(Segment segment, boolean closed, String left, String right) {
  boolean drawn() {
    return left.isEmpty();
  }
}
