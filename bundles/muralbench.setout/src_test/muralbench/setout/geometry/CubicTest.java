// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CubicTest {
  /** The parabola y = x² from 0 to 1 has length (2 sqrt 5 + asinh 2) / 4. */
  @Test
  void measuresAParabola() {
    Cubic parabola = Cubic.ofQuadratic(Vec.ZERO, new Vec(0.5, 0), new Vec(1, 1));
    double asinh2 = Math.log(2 + Math.sqrt(5));
    assertEquals((2 * Math.sqrt(5) + asinh2) / 4, parabola.length(), 1e-9);
    assertEquals(new Vec(0.25, 0.0625), parabola.at(0.25));
  }

  /** Neile's parabola (t², t³), 0 to 1: length (13 sqrt 13 - 8) / 27, swept area 1/10; its speed is 0 at the start. */
  @Test
  void measuresACurveWithACusp() {
    Cubic neile = new Cubic(Vec.ZERO, Vec.ZERO, new Vec(1 / 3.0, 0), new Vec(1, 1));
    assertEquals((13 * Math.sqrt(13) - 8) / 27, neile.length(), 1e-9);
    assertEquals(0.1, neile.sweptArea(), 1e-15);
  }

  @Test
  void measuresALineThatTurnsBack() {
    Cubic back = new Cubic(Vec.ZERO, new Vec(40, 0), new Vec(40, 0), Vec.ZERO);
    assertEquals(60, back.length(), 1e-6);
    assertEquals(new Box(0, 0, 30, 0), back.box());
  }

  /** A quadratic has no cubic term, and its extreme is known: height 1/2 of the control point's. */
  @Test
  void fitsTheBoxOfAQuadratic() {
    Box box = Cubic.ofQuadratic(Vec.ZERO, new Vec(50, 80), new Vec(100, 0)).box();
    assertEquals(40, box.maxY(), 1e-12);
    assertEquals(100, box.maxX(), 1e-12);
    Box exact = new Cubic(Vec.ZERO, new Vec(0, 3), new Vec(0, 3), Vec.ZERO).box();
    assertEquals(2.25, exact.maxY(), 1e-12);
  }

  @Test
  void fitsTheBoxWhereTheCubicTermAloneIsLeft() {
    // x = t³, and y = 4 t³ - 6 t² + 3 t, whose derivative 3 (2 t - 1)² has a double root.
    Box box = new Cubic(Vec.ZERO, new Vec(0, 1), new Vec(0, 0), new Vec(1, 1)).box();
    assertEquals(new Box(0, 0, 1, 1), box);
  }

  @Test
  void fitsTheBoxWhenTheSlopeStartsAtZero() {
    // y = 3 t² - 4 t³ begins level and is highest, 1/4, at t = 1/2.
    Box box = new Cubic(Vec.ZERO, Vec.ZERO, new Vec(0, 1), new Vec(9, -1)).box();
    assertEquals(0.25, box.maxY(), 1e-12);
    assertEquals(-1, box.minY(), 1e-12);
  }
}
