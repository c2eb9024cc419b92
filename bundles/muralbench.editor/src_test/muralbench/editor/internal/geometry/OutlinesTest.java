// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import muralbench.editor.internal.commands.OutlineKind;
import muralbench.model.CircleOutline;
import muralbench.model.MuralFactory;
import muralbench.model.Outline;
import muralbench.model.PathOutline;
import muralbench.setout.geometry.Box;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class OutlinesTest {
  private static final String ARCH = "M2500 900 H3500 V1900 A500 500 0 0 1 2500 1900 Z";
  private static final String TILTED = "M0 0 H400 A300 120 30 0 1 0 200 Z";

  private static PathOutline path(String data) {
    PathOutline path = MuralFactory.eINSTANCE.createPathOutline();
    path.setData(data);
    return path;
  }

  private static double area(Outline outline) {
    return Outlines.contour(outline).orElseThrow().area();
  }

  /** An affine map multiplies areas by its determinant, whatever the shape (plane geometry). */
  @Property(tries = 100)
  void aStretchedPathHasTheStretchedAreaAndFrame(@ForAll @DoubleRange(min = 0.2, max = 5) double sx,
      @ForAll @DoubleRange(min = 0.2, max = 5) double sy) {
    for (String data : new String[] {ARCH, TILTED, "M0 0 C100 -50 300 50 400 0 Q500 200 200 300 Z"}) {
      PathOutline path = path(data);
      double before = area(path);
      Frame from = Outlines.frame(path).orElseThrow();
      Frame to = new Frame(17, 23, from.width() * sx, from.height() * sy);
      Outlines.fit(path, from, to);
      assertEquals(before * sx * sy, area(path), 1e-4 * before * sx * sy);
      Box box = Outlines.contour(path).orElseThrow().box();
      assertEquals(to.x(), box.minX(), 1e-2);
      assertEquals(to.right(), box.maxX(), 1e-2);
      assertEquals(to.top(), box.maxY(), 1e-2);
    }
  }

  @Test
  void anArchThatMovesKeepsItsRadius() {
    PathOutline path = path(ARCH);
    Outlines.shift(path, 25.4, 0);
    assertTrue(path.getData().contains("500"), path.getData());
    assertEquals(1000 * 1000 + Math.PI * 500 * 500 / 2, area(path), 1e-6);
  }

  @Test
  void aCircleTakesTheLargestRadiusThatFits() {
    CircleOutline circle = Outlines.circle(new Frame(0, 0, 100, 100));
    Outlines.fit(circle, new Frame(0, 0, 100, 100), new Frame(0, 0, 300, 200));
    assertEquals(100, circle.getRadius());
    assertEquals(150, circle.getCentreX());
  }

  @Test
  void aPathThatCannotBeReadHasNoFrame() {
    assertTrue(Outlines.frame(path("M0 0 L nowhere")).isEmpty());
    assertTrue(OutlineKind.RECTANGLE.from(path("")).isEmpty());
  }

  @Test
  void otherKindsKeepThePlace() {
    PathOutline arch = path(ARCH);
    for (OutlineKind kind : OutlineKind.values()) {
      Outline other = kind.from(arch).orElseThrow();
      assertEquals(kind, OutlineKind.of(other));
      assertEquals(3000, Outlines.frame(other).orElseThrow().middleX(), 1e-6);
    }
  }

  @Test
  void aPolygonOfACurveKeepsItsArea() {
    Outline polygon = OutlineKind.POLYGON.from(path(ARCH)).orElseThrow();
    assertEquals(area(path(ARCH)), area(polygon), 0.5 * 1600);
  }
}
