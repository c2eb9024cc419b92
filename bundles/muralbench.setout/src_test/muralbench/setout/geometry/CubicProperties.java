// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.CubicCurve2D;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class CubicProperties {
  @Property(tries = 300)
  void fitsTheBoxJavaGeometryFlattensTo(@ForAll long seed) {
    Random random = new Random(seed);
    Cubic c = new Cubic(point(random), point(random), point(random), point(random));
    Box box = c.box();
    var foreign = Foreign.tight(new CubicCurve2D.Double(c.start().x(), c.start().y(), c.c1().x(), c.c1().y(),
        c.c2().x(), c.c2().y(), c.end().x(), c.end().y()));
    assertEquals(foreign.getMinX(), box.minX(), 1e-4);
    assertEquals(foreign.getMaxX(), box.maxX(), 1e-4);
    assertEquals(foreign.getMinY(), box.minY(), 1e-4);
    assertEquals(foreign.getMaxY(), box.maxY(), 1e-4);
  }

  @Property(tries = 200)
  void flattensWithinTheChordError(@ForAll long seed) {
    Random random = new Random(seed);
    Cubic curve = new Cubic(point(random), point(random), point(random), point(random));
    int chords = curve.flatten(0.05).size();
    for (int i = 0; i < chords; i++) {
      Cubic piece = curve.part((double) i / chords, (i + 1.0) / chords);
      Vec chord = piece.end().minus(piece.start());
      double off = Math.abs(chord.cross(piece.at(0.5).minus(piece.start()))) / chord.length();
      assertTrue(off <= 0.0501, () -> curve + " is off by " + off);
    }
  }

  /** Points on a coarse grid, so that equal and collinear control points come up. */
  private static Vec point(Random random) {
    return random.nextBoolean() ? new Vec(random.nextInt(4) * 100, random.nextInt(4) * 100)
        : new Vec(random.nextDouble() * 500, random.nextDouble() * 500);
  }
}
