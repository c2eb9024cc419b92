// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MotionTest {
  private static final Vec POINT = new Vec(123.4, -56.7);

  @ParameterizedTest
  @CsvSource({"0, 3, 1", "90, -1, 3", "180, -3, -1", "270, 1, -3", "-90, 1, -3", "450, -1, 3", "-360, 3, 1"})
  void turnsByQuartersExactly(double degrees, double x, double y) {
    Vec turned = Motion.turn(degrees, Vec.ZERO).of(new Vec(3, 1));
    assertEquals(x, turned.x(), 0);
    assertEquals(y, turned.y(), 0);
  }

  @Test
  void carriesOutOneMovementAfterTheOther() {
    Motion first = Motion.turn(90, Vec.ZERO);
    Motion next = Motion.shift(new Vec(10, 0));
    assertEquals(new Vec(8, 1), first.then(next).of(new Vec(1, 2)));
    assertEquals(new Vec(-2, 11), next.then(first).of(new Vec(1, 2)));
  }

  @Test
  void keepsTheCentreOfATurn() {
    assertEquals(0, Motion.turn(37, POINT).of(POINT).distance(POINT), 1e-12);
  }
}
