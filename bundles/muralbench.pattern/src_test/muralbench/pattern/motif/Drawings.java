// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.InputException;
import muralbench.setout.geometry.Contour;

/** Motifs for tests. */
final class Drawings {
  private Drawings() {}

  /** A motif on a unit tile, ground white, from lines of the text form. */
  static Motif tile(String... lines) {
    return read("motif Test\ntile 1 1\nground white\n" + String.join("\n", lines));
  }

  static Motif read(String text) {
    try {
      return MotifText.parse("test", text);
    } catch (InputException e) {
      throw new AssertionError(e);
    }
  }

  /** A drawing without any symmetry: a flag with a curve and an arc. */
  static Motif flag() {
    return tile("region flag red M 0.1 0.1 L 0.6 0.2 C 0.7 0.4 0.4 0.5 0.6 0.7 L 0.2 0.8 A 0.5 0.5 0 0 0 0.1 0.1 Z",
        "region dot blue M 0.8 0.8 A 0.1 0.1 0 0 1 0.6 0.8 A 0.1 0.1 0 0 1 0.8 0.8 Z");
  }

  /** A grid of unit squares, one digit a colour, rows from the bottom. */
  static Motif grid(int side, int number, int colours) {
    List<Region> squares = new ArrayList<>();
    int rest = number;
    for (int i = 0; i < side * side; i++) {
      Contour square = Contour.rectangle(i % side, i / side, 1, 1);
      squares.add(Region.of("square " + i, "colour " + rest % colours, square));
      rest /= colours;
    }
    return new Motif("grid", side, side, 1, "white", squares, List.of());
  }
}
