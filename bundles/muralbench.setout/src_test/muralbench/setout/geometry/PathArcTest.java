// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.util.List;
import muralbench.setout.geometry.PathData.PathDataException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arcs of path data; rules in SVG 1.1, F.6, read with y up. */
class PathArcTest {
  private static Arc arc(String data) throws PathDataException {
    return assertInstanceOf(Arc.class, PathData.parse(data).get(0).segments().get(0));
  }

  private static void assertNear(Vec expected, Vec found, double tolerance) {
    assertTrue(expected.distance(found) <= tolerance, () -> expected + " expected, found " + found);
  }

  /** The four ways from one point to another round the same radius: F.6.2 and the figure in 8.3.8. */
  @ParameterizedTest
  @CsvSource({"0,1, 10,0, 90", "1,1, 0,10, 270", "1,0, 10,0, -270", "0,0, 0,10, -90"})
  void choosesTheArcByItsFlags(int large, int sweep, double x, double y, double degrees) throws PathDataException {
    Arc arc = arc("M10 10A10 10 0 " + large + " " + sweep + " 0 0Z");
    assertNear(new Vec(x, y), arc.centre(), 1e-9);
    assertEquals(Math.toRadians(degrees), arc.sweep(), 1e-9);
    assertNear(new Vec(10, 10), arc.start(), 1e-9);
    assertNear(Vec.ZERO, arc.end(), 1e-9);
  }

  @Test
  void runsCounterClockwiseForASweepFlagOfOne() throws PathDataException {
    assertEquals(Math.PI * 25 * 25 / 2, PathData.parse("M50 0A25 25 0 0 1 0 0Z").get(0).signedArea(), 1e-9);
    assertEquals(-Math.PI * 25 * 25 / 2, PathData.parse("M50 0A25 25 0 0 0 0 0Z").get(0).signedArea(), 1e-9);
  }

  @Test
  void readsFlagsWithoutSeparators() throws PathDataException {
    assertEquals(arc("M0 0A5 5 30 0 1 8 0Z"), arc("M0 0A5 5 30 018 0Z"));
    assertEquals(arc("M0 0A5 5 30 1 0 -3.5 .5Z"), arc("M0 0a5,5,30,10-3.5.5z"));
  }

  /** The arc of the example in SVG 1.1, 8.3.8: radius 25 does not span 50 by 25, so it grows to half the distance. */
  @Test
  void growsRadiiThatAreTooShort() throws PathDataException {
    Arc arc = arc("M0 0a25,25 -30 0,1 50,-25z");
    assertEquals(Math.hypot(50, 25) / 2, arc.rx(), 1e-12);
    assertNear(new Vec(25, -12.5), arc.centre(), 1e-12);
    assertEquals(Math.PI, arc.sweep(), 1e-12);
  }

  @Test
  void growsBothRadiiOfAnEllipseAlike() throws PathDataException {
    Arc arc = arc("M0 0A10 5 90 0 1 30 0Z");
    assertEquals(30, arc.rx(), 1e-9);
    assertEquals(15, arc.ry(), 1e-9);
  }

  @Test
  void drawsALineForAZeroRadiusAndNothingForEqualEnds() throws PathDataException {
    Contour contour = PathData.parse("M0 0A0 5 0 0 1 10 0A5 5 0 1 1 10 0V10Z").get(0);
    assertEquals(Contour.polygon(List.of(Vec.ZERO, new Vec(10, 0), new Vec(10, 10))), contour);
  }

  @Test
  void dropsTheSignOfARadius() throws PathDataException {
    assertEquals(arc("M0 0A7 5 20 0 1 8 2Z"), arc("M0 0A-7 -5 20 0 1 8 2Z"));
  }

  @ParameterizedTest
  @CsvSource({"60,25,0,10,80", "60,25,30,-100,200", "20,45,-75,170,-130", "33,32,400,5,-300"})
  void coversTheSameChordAreaAsJavaGeometry(double rx, double ry, double tilt, double from, double sweep)
      throws PathDataException {
    Arc2D plain = new Arc2D.Double(-rx, -ry, 2 * rx, 2 * ry, -from, -sweep, Arc2D.CHORD);
    AffineTransform turn = AffineTransform.getRotateInstance(Math.toRadians(tilt));
    Vec start = moved(turn, plain.getStartPoint().getX(), plain.getStartPoint().getY());
    Vec end = moved(turn, plain.getEndPoint().getX(), plain.getEndPoint().getY());
    Contour contour = PathData.parse("M" + start.x() + " " + start.y() + "A" + rx + " " + ry + " " + tilt
        + (Math.abs(sweep) > 180 ? " 1" : " 0") + (sweep > 0 ? " 1 " : " 0 ") + end.x() + " " + end.y() + "Z").get(0);
    double expected = Foreign.area(turn.createTransformedShape(plain));
    // Arc2D draws quarter ellipses by Bezier curves, which are off by up to 2.7e-4 of the radius.
    assertEquals(expected, contour.signedArea(), 2e-3 * rx * ry);
    assertEquals(Foreign.tight(turn.createTransformedShape(plain)).getWidth(), contour.box().width(), 1e-3 * rx);
    assertEquals(Foreign.tight(turn.createTransformedShape(plain)).getMaxY(), contour.box().maxY(), 1e-3 * rx);
  }

  private static Vec moved(AffineTransform turn, double x, double y) {
    double[] point = {x, y};
    turn.transform(point, 0, point, 0, 1);
    return new Vec(point[0], point[1]);
  }
}
