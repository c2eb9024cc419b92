// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.List;
import muralbench.pattern.symmetry.Isometry;
import muralbench.pattern.symmetry.Patch;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;

/**
 * A filled area of a motif. What lies within an even number of its contours is not filled.
 *
 * @param name what the person who drew it calls it, for messages
 * @param colour name of its colour
 * @param contours its edges, at least one; in a motif outer edges run counter-clockwise and holes clockwise
 */
public record Region(String name, String colour, List<Contour> contours) {
  public Region {
    if (contours.isEmpty()) {
      throw new IllegalArgumentException("a region needs a contour");
    }
    contours = List.copyOf(contours);
  }

  /** A region with one contour. */
  public static Region of(String name, String colour, Contour contour) {
    return new Region(name, colour, List.of(contour));
  }

  /** The filled area in square units of the drawing; of a region of a motif. */
  public double area() {
    return Math.abs(contours.stream().mapToDouble(Contour::signedArea).sum());
  }

  /** The smallest upright rectangle around it. */
  public Box box() {
    return contours.stream().map(Contour::box).reduce(Box::and).orElseThrow();
  }

  /** The same area in another colour. */
  public Region coloured(String other) {
    return new Region(name, other, contours);
  }

  /** The area as a patch of a pattern, after a movement. */
  public Patch patch(Isometry movement) {
    return new Patch(colour, contours).moved(movement);
  }

  /** The region after a movement, with its edges the usual way round. */
  public Region moved(Isometry movement) {
    List<Contour> moved = contours.stream().map(movement::of).toList();
    return new Region(name, colour, movement.mirrors() ? moved.stream().map(Contour::reversed).toList() : moved);
  }
}
