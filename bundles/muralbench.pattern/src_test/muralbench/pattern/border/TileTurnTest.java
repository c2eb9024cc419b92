// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The eight ways a square tile can lie, against movements of the plane. */
class TileTurnTest {
  private static final Box CELL = new Box(0, 0, 6, 6);

  static List<TileTurn> all() {
    return Stream.of(0, 1, 2, 3).flatMap(q -> Stream.of(new TileTurn(q, false), new TileTurn(q, true))).toList();
  }

  @ParameterizedTest
  @MethodSource("all")
  void oneAfterTheOtherIsTheMovementsOneAfterTheOther(TileTurn first) {
    for (TileTurn second : all()) {
      Isometry both = first.on(CELL).then(second.on(CELL));
      assertEquals(both.of(new Vec(1, 2)), first.then(second).on(CELL).of(new Vec(1, 2)), first + " " + second);
    }
  }

  @Test
  void aTopTileTurnedOnceLiesOnTheLeftSide() {
    // Drawn 6 by 4, outer edge above; on the left side its top looks left, its start is below.
    Isometry placed = TileTurn.quarter(1).on(new Box(0, 10, 4, 16));
    assertEquals(new Vec(0, 10), placed.of(new Vec(0, 4)));
    assertEquals(new Vec(4, 16), placed.of(new Vec(6, 0)));
  }

  @Test
  void theMirrorAlongTheRunSwapsTheEdges() {
    Isometry placed = TileTurn.ALONG.on(new Box(0, 0, 6, 4));
    assertEquals(new Vec(1, 3), placed.of(new Vec(1, 1)));
  }
}
