// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class NarrowWidthTest {
  @Test
  void aRectangleIsAsNarrowAsItsShortSide() {
    assertEquals(30, width(Contour.rectangle(5, 5, 80, 30)), 1e-9);
  }

  @Test
  void anLIsAsNarrowAsItsThinnerLeg() {
    assertEquals(10, width(polygon(0, 0, 100, 0, 100, 10, 40, 10, 40, 100, 0, 100)), 1e-9);
  }

  @Test
  void aUIsMeasuredThroughTheTileNotThroughTheGap() {
    assertEquals(20, width(polygon(0, 0, 100, 0, 100, 90, 80, 90, 80, 30, 75, 30, 75, 90, 0, 90)), 1e-9);
  }

  @Test
  void aClippedCornerDoesNotMakeATileNarrow() {
    assertEquals(100, width(polygon(0, 0, 100, 0, 100, 99, 99, 100, 0, 100)), 1e-9);
  }

  @Test
  void aTriangleIsAsNarrowAsItsLeastHeight() {
    assertEquals(24, width(polygon(0, 0, 40, 0, 40, 30)), 1e-9);
  }

  /** Between the long side and a parallel through the farthest corner: 5000 / sqrt(100² + 45²). */
  @Test
  void aTaperingPieceIsMeasuredAsAWholeHoweverThinItsEnd() {
    double whole = 5000 / Math.hypot(100, 45);
    assertEquals(whole, width(polygon(0, 0, 100, 0, 100, 5, 0, 50)), 1e-9);
    assertEquals(whole, width(polygon(0, 0, 100, 0, 100, 50, 0, 5)), 1e-9);
    assertEquals(whole, width(polygon(0, 0, 5, 0, 50, 100, 0, 100)), 1e-9);
    assertEquals(5000 / Math.hypot(100, 50), width(polygon(0, 0, 100, 0, 0, 50)), 1e-9);
  }

  @Test
  void aTipUnderACurveIsNoWidth() {
    // The corner that an arc of radius 100 leaves of a square runs out in two tips: its width is that of the triangle.
    Contour corner = new Contour(List.of(new Line(new Vec(100, 0), new Vec(100, 100)),
        new Line(new Vec(100, 100), new Vec(0, 100)), Arc.circular(Vec.ZERO, 100, 0, Math.PI / 2).reversed()));

    assertEquals(100 / Math.sqrt(2), width(corner), 1e-6);
  }

  @Test
  void aWebBesideAHoleCounts() {
    Contour hole = Contour.rectangle(10, 40, 20, 20).reversed();

    assertEquals(10, NarrowWidth.of(Contour.rectangle(0, 0, 100, 100), List.of(hole)), 1e-9);
  }

  @Test
  void aRoundHoleLeavesItsNearestWeb() {
    Contour hole = Contour.circle(new Vec(30, 50), 20).reversed();

    assertEquals(10, NarrowWidth.of(Contour.rectangle(0, 0, 100, 100), List.of(hole)), 0.1);
  }

  private static double width(Contour contour) {
    return NarrowWidth.of(contour, List.of());
  }

  private static Contour polygon(double... coordinates) {
    List<Vec> corners = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      corners.add(new Vec(coordinates[i], coordinates[i + 1]));
    }
    return Contour.polygon(corners);
  }
}
