// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.eclipse.draw2d.geometry.Rectangle;
import org.junit.jupiter.api.Test;

class WallPlaneTest {
  @Test
  void upOnTheWallIsUpOnTheScreen() {
    assertEquals(new Rectangle(100, -300, 200, 100), WallPlane.rectangle(new Frame(10, 20, 20, 10)));
    assertEquals(-200, WallPlane.point(10, 20).y);
    assertEquals(20, WallPlane.wallY(-200));
  }

  @Test
  void aRectangleInUnitsComesBackAsItsFrame() {
    Frame frame = new Frame(-12.5, 30.1, 100.4, 7.3);
    assertEquals(frame.box().maxY(), WallPlane.frame(WallPlane.rectangle(frame)).top(), 0.1);
    assertEquals(frame.x(), WallPlane.frame(WallPlane.rectangle(frame)).x(), 0.1);
  }

  @Property
  void theRectangleCoversItsFrame(@ForAll @DoubleRange(min = -1e5, max = 1e5) double x,
      @ForAll @DoubleRange(min = 0, max = 1e4) double y, @ForAll @DoubleRange(min = 0.01, max = 1e4) double size) {
    Frame covered = WallPlane.frame(WallPlane.rectangle(new Frame(x, y, size, size)));
    assertTrue(covered.x() <= x + 1e-6 && covered.y() <= y + 1e-6);
    assertTrue(covered.right() >= x + size - 1e-6 && covered.top() >= y + size - 1e-6);
  }
}
