// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.symmetry;

import java.util.List;
import muralbench.setout.geometry.Contour;

/**
 * A coloured area of a drawing.
 *
 * @param colour name of the colour
 * @param contours its edges, none crossing another or itself; holes run the other way round than the outside
 */
public record Patch(String colour, List<Contour> contours) {
  public Patch {
    contours = List.copyOf(contours);
  }

  /** The patch after a movement. */
  public Patch moved(Isometry isometry) {
    return new Patch(colour, contours.stream().map(isometry::of).toList());
  }
}
