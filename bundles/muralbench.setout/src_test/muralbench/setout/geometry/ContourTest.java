// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ContourTest {
  private static final Motion FAR = Motion.shift(new Vec(9e5 + 0.1, -8e5 - 0.3));

  /** A door with a round top, 800 wide, 2000 to the springing. */
  private static Contour arch() {
    Vec left = new Vec(0, 2000);
    return new Contour(List.of(new Line(Vec.ZERO, new Vec(800, 0)), new Line(new Vec(800, 0), new Vec(800, 2000)),
        Arc.circular(new Vec(400, 2000), 400, 0, Math.PI), new Line(left, Vec.ZERO)));
  }

  @Test
  void measuresLinesAndArcsTogether() {
    assertEquals(800 * 2000 + Math.PI * 400 * 400 / 2, arch().signedArea(), 1e-6);
    assertEquals(800 + 2 * 2000 + Math.PI * 400, arch().length(), 1e-9);
    Box box = arch().box();
    assertEquals(2400, box.maxY(), 1e-9);
    assertEquals(800, box.width(), 1e-9);
  }

  @Test
  void keepsItsAreaFarFromTheOrigin() {
    Contour small = Contour.polygon(List.of(Vec.ZERO, new Vec(0.5, 0.1), new Vec(0.2, 0.4)));
    assertEquals(0.09, small.moved(FAR).signedArea(), 1e-9);
    assertEquals(arch().signedArea(), arch().moved(FAR).signedArea(), 1e-5);
    assertEquals(Math.PI * 25, Contour.circle(Vec.ZERO, 5).moved(FAR).signedArea(), 1e-8);
  }

  @Test
  void turnsCounterClockwise() {
    Contour clockwise = arch().reversed();
    assertEquals(-arch().signedArea(), clockwise.signedArea(), 1e-6);
    assertEquals(arch().signedArea(), clockwise.counterClockwise().signedArea(), 1e-6);
    assertEquals(arch().area(), clockwise.area(), 1e-6);
    Contour already = arch();
    assertSame(already, already.counterClockwise());
  }

  @Test
  void flattensWithoutRepeatingTheFirstCorner() {
    List<Vec> points = arch().points(0.05);
    assertEquals(Vec.ZERO, points.get(0));
    assertEquals(new Vec(800, 0), points.get(1));
    assertTrue(points.get(points.size() - 1).distance(new Vec(0, 2000)) < 1e-9);
    assertEquals(arch().area(), Contour.polygon(points).area(), 0.05 * Math.PI * 400);
  }

  @Test
  void knowsWhetherItIsStraight() {
    assertTrue(Contour.rectangle(0, 0, 1, 1).straight());
    assertFalse(arch().straight());
  }

  @Test
  void needsASegment() {
    assertThrows(IllegalArgumentException.class, () -> new Contour(List.of()));
  }

  @Test
  void boundsWithTouchingEdges() {
    Box box = new Box(0, 0, 10, 5);
    assertTrue(box.meets(new Box(10, 5, 12, 7)));
    assertFalse(box.meets(new Box(10.1, 0, 12, 7)));
    assertTrue(box.holds(new Box(0, 1, 10, 5)));
    assertFalse(box.holds(new Box(0, 1, 10, 5.1)));
    assertEquals(new Box(-1, -1, 11, 6), box.grown(1));
    assertEquals(new Vec(5, 2.5), box.centre());
  }
}
