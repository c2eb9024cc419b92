// SPDX-License-Identifier: EPL-2.0
package muralbench.export.internal.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Line;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;

class HatchingTest {
  private static final Contour SQUARE = Contour.rectangle(10, 20, 30, 30);

  @Test
  void linesCoverTheAreaEvenly() {
    double length = Hatching.CUT.lines(List.of(SQUARE), List.of()).stream().mapToDouble(Line::length).sum();
    assertEquals(30 * 30, length * Hatching.CUT.spacing(), 10);
  }

  @Test
  void holesStayFree() {
    Contour hole = Contour.circle(new Vec(25, 35), 8);
    for (Line line : Hatching.CUT.lines(List.of(SQUARE, hole), List.of())) {
      assertTrue(line.at(0.5).distance(new Vec(25, 35)) > 7.9 && line.start().distance(new Vec(25, 35)) > 7.9);
    }
  }

  @Test
  void placesOfTextsStayFree() {
    Box text = new Box(15, 30, 35, 35);
    for (Line line : Hatching.CUT.lines(List.of(SQUARE), List.of(text))) {
      for (double t = 0; t <= 1; t += 0.05) {
        Vec p = line.at(t);
        assertTrue(!text.grown(-1e-6).holds(Box.of(p, p)), "hatching at " + p);
      }
    }
  }

  @Test
  void neighboursShareTheGrid() {
    double step = Hatching.CUT.spacing() * Math.sqrt(2);
    for (Line line : Hatching.CUT.lines(List.of(SQUARE), List.of())) {
      double along = (line.start().y() - line.start().x()) / step;
      assertEquals(Math.rint(along), along, 1e-9);
    }
  }
}
