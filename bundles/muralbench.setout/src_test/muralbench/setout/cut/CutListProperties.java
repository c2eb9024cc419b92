// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Motion;
import muralbench.setout.geometry.Vec;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class CutListProperties {
  private static final Contour SQUARE = Contour.rectangle(0, 0, 150, 150);

  /** A piece that has no symmetry: four different distances from the corners, a skew cut. */
  private static Contour odd(Random random) {
    return Cuts.polygon(0, 0, 100 + random.nextDouble() * 9, 0, 70 + random.nextDouble() * 9,
        50 + random.nextDouble() * 9, 0, 20 + random.nextDouble() * 9);
  }

  private static Motion anywhere(Random random) {
    return Motion.turn(random.nextDouble() * 360, Vec.ZERO)
        .then(Motion.shift(new Vec(random.nextDouble() * 9000, random.nextDouble() * 3000)));
  }

  @Property(tries = 200)
  void keepsTheGroupWhenAPieceIsTurned(@ForAll long seed) {
    Random random = new Random(seed);
    Contour piece = odd(random);
    Contour turned = Cuts.turned(piece, SQUARE, 90 * random.nextInt(4));
    assertEquals(List.of(List.of("P-1", "P-2")), new Cuts(150, 150).add(SQUARE, piece, anywhere(random))
        .add(SQUARE, turned, anywhere(random)).keys());
  }

  @Property(tries = 200)
  void makesAnotherGroupWhenAPieceIsMirrored(@ForAll long seed) {
    Random random = new Random(seed);
    Contour piece = odd(random);
    Contour turned = Cuts.turned(Cuts.mirrored(piece, 150), SQUARE, 90 * random.nextInt(4));
    assertEquals(List.of(List.of("P-1"), List.of("P-2")), new Cuts(150, 150).add(SQUARE, piece, anywhere(random))
        .add(SQUARE, turned, anywhere(random)).keys());
  }

  @Property(tries = 100)
  void putsEveryPieceInExactlyOneGroup(@ForAll long seed) {
    Random random = new Random(seed);
    List<Contour> shapes = IntStream.range(0, 5).mapToObj(i -> odd(random)).toList();
    int[] chosen = random.ints(40, 0, 5).toArray();
    Cuts cuts = new Cuts(150, 150);
    for (int shape : chosen) {
      cuts.add(SQUARE, Cuts.turned(shapes.get(shape), SQUARE, 90 * random.nextInt(4)), anywhere(random));
    }
    List<List<String>> expected = IntStream.of(chosen).distinct().mapToObj(shape -> IntStream.range(0, 40)
        .filter(i -> chosen[i] == shape).mapToObj(i -> "P-" + (i + 1)).toList()).toList();
    assertEquals(expected, cuts.keys());
  }
}
