// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.AffineTransform;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class MotionProperties {
  private static final Vec POINT = new Vec(123.4, -56.7);

  @Property(tries = 200)
  void turnsAsJavaGeometryDoes(@ForAll @DoubleRange(min = -1000, max = 1000) double degrees,
      @ForAll @DoubleRange(min = -1000, max = 1000) double x, @ForAll @DoubleRange(min = -1000, max = 1000) double y) {
    double[] foreign = {POINT.x(), POINT.y()};
    AffineTransform.getRotateInstance(Math.toRadians(degrees), x, y).transform(foreign, 0, foreign, 0, 1);
    Vec turned = Motion.turn(degrees, new Vec(x, y)).of(POINT);
    assertEquals(0, turned.distance(new Vec(foreign[0], foreign[1])), 1e-9);
  }

  @Property(tries = 200)
  void comesBackByItsInverse(@ForAll @DoubleRange(min = -400, max = 400) double degrees,
      @ForAll @DoubleRange(min = -1000, max = 1000) double x) {
    Motion motion = Motion.turn(degrees, new Vec(x, 5)).then(Motion.shift(new Vec(7, x)));
    assertEquals(0, motion.inverse().of(motion.of(POINT)).distance(POINT), 1e-9);
    assertEquals(0, motion.of(motion.inverse().of(POINT)).distance(POINT), 1e-9);
    assertEquals(0, motion.then(motion.inverse()).of(POINT).distance(POINT), 1e-9);
    assertEquals(0, motion.then(motion.inverse()).turn(), 1e-12);
  }
}
