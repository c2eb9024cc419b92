// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import muralbench.pattern.symmetry.Isometry;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The orientations multiply like the movements they stand for. */
class OrientationTest {
  @ParameterizedTest
  @EnumSource
  void productsAreThoseOfTheMovements(Orientation first) {
    for (Orientation second : Orientation.values()) {
      Isometry one = first.in(3, 2);
      Isometry other = first.swapsSides() ? second.in(2, 3) : second.in(3, 2);
      assertEquals(first.then(second).in(3, 2).of(new Vec(1, 0.5)), one.then(other).of(new Vec(1, 0.5)));
      assertEquals(first.then(second), Orientation.of(one.then(other)));
    }
  }

  @ParameterizedTest
  @EnumSource
  void theInverseBringsBack(Orientation orientation) {
    assertEquals(Orientation.AS_DRAWN, orientation.then(orientation.inverse()));
  }

  @Test
  void aQuarterTurnIsCounterClockwise() {
    assertEquals(new Vec(2, 0), Orientation.QUARTER_TURN.in(3, 2).of(new Vec(0, 0)));
    assertEquals(new Vec(3, 0), Orientation.MIRRORED.in(3, 2).of(new Vec(0, 0)));
  }
}
