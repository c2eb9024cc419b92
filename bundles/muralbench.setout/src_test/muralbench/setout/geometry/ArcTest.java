// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArcTest {
  private static Arc ellipse(double rx, double ry) {
    return new Arc(new Vec(100, 200), rx, ry, 0.4, 1, 2 * Math.PI);
  }

  /** A 60 in round face: 2 pi r and pi r². */
  @Test
  void measuresACircleExactly() {
    Contour circle = Contour.circle(new Vec(900, 1500), 762);
    assertEquals(2 * Math.PI * 762, circle.length(), 1e-9);
    assertEquals(Math.PI * 762 * 762, circle.signedArea(), 1e-8);
    assertEquals(1524, circle.box().width(), 1e-9);
    assertEquals(1524, circle.box().height(), 1e-9);
  }

  /** Perimeter 4 a E(m) with m = 3/4, E(3/4) = 1.2110560275684595 (complete elliptic integral, DLMF 19.2.8). */
  @Test
  void measuresAnEllipseTwiceAsLongAsWide() {
    assertEquals(4 * 2 * 1.2110560275684595, ellipse(2, 1).length(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.0000001, 1.1, 3, 25, 400, 50_000})
  void measuresAnEllipseAsTheArithmeticGeometricMeanDoes(double ratio) {
    double expected = perimeter(600, 600 / ratio);
    assertEquals(expected, ellipse(600, 600 / ratio).length(), 2e-9 * expected);
    assertEquals(expected, ellipse(600 / ratio, 600).length(), 2e-9 * expected);
  }

  /** Perimeter of an ellipse by the arithmetic-geometric mean: DLMF 19.8.5 and 19.8.6. */
  private static double perimeter(double longer, double shorter) {
    double a = 1;
    double g = shorter / longer;
    double c2 = 1 - g * g;
    double sum = c2 / 2;
    for (double power = 1; c2 > 1e-34 && power < 1e4; power *= 2) {
      double c = (a - g) / 2;
      double mean = (a + g) / 2;
      g = Math.sqrt(a * g);
      a = mean;
      c2 = c * c;
      sum += power * c2;
    }
    return 4 * longer * Math.PI / (2 * a) * (1 - sum);
  }

  @Test
  void agreesWithRamanujansPerimeter() {
    // Ramanujan 1914, second approximation; relative error about 5 parts in 1e13 at this ratio.
    double h = Math.pow((300.0 - 200) / (300 + 200), 2);
    double expected = Math.PI * 500 * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h)));
    assertEquals(expected, ellipse(300, 200).length(), 1e-7);
  }

  @Test
  void enclosesTheAreaOfAnEllipse() {
    Contour contour = new Contour(List.of(ellipse(300, 200)));
    assertEquals(Math.PI * 300 * 200, contour.signedArea(), 1e-8);
  }

  /** Box of a turned ellipse: half width sqrt(rx² cos² + ry² sin²). */
  @Test
  void fitsTheBoxOfATurnedEllipse() {
    double c = Math.cos(0.4);
    double s = Math.sin(0.4);
    Box box = ellipse(300, 200).box();
    assertEquals(2 * Math.hypot(300 * c, 200 * s), box.width(), 1e-9);
    assertEquals(2 * Math.hypot(300 * s, 200 * c), box.height(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0, 90, 45, true", "0, 90, 100, false", "0, 90, 405, true", "0, 90, -315, true", "350, 20, 5, true",
      "350, 20, 30, false", "90, -90, 45, true", "90, -90, 100, false", "0, -360, 200, true", "-170, 340, 175, false",
      "-170, 340, 169, true"})
  void knowsWhichAnglesItPasses(double from, double sweep, double angle, boolean passes) {
    Arc arc = Arc.circular(Vec.ZERO, 10, Math.toRadians(from), Math.toRadians(sweep));
    assertEquals(passes, arc.covers(Math.toRadians(angle)));
  }

  @Test
  void closesAFullTurnExactly() {
    Arc turn = Arc.circular(new Vec(0.1, 0.7), 33.3, 0.3, 2 * Math.PI);
    assertEquals(turn.start(), turn.end());
    assertEquals(turn.reversed().start(), turn.reversed().end());
  }

  /** Sagitta r (1 - cos(step / 2)): a 1 m circle needs 2222 chords for 0.001 mm, as a multiple of four 2224. */
  @Test
  void usesNoMoreChordsThanNeeded() {
    assertEquals(2224, Arc.circular(Vec.ZERO, 1000, 0, 2 * Math.PI).flatten(0.001).size());
  }

  @Test
  void keepsACircleRoundHoweverCoarse() {
    assertEquals(4, Contour.circle(Vec.ZERO, 5).points(100).size());
  }

  @Test
  void tellsCirclesFromEllipses() {
    assertTrue(Arc.circular(Vec.ZERO, 4, 0, 1).circular());
    assertFalse(ellipse(2, 1).circular());
  }
}
