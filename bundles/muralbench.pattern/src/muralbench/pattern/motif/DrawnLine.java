// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.List;
import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Segment;

/**
 * A line of wax drawn within one colour, such as the vein of a leaf.
 *
 * @param name what the person who drew it calls it, for messages
 * @param segments its stretches, at least one, each starting where the one before ends
 */
public record DrawnLine(String name, List<Segment> segments) {
  public DrawnLine {
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a line needs a stretch");
    }
    segments = List.copyOf(segments);
  }

  /** The line after a movement. */
  public DrawnLine moved(Isometry movement) {
    return new DrawnLine(name, segments.stream().map(movement::of).toList());
  }
}
