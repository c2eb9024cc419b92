// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Path2D;
import java.util.List;
import muralbench.setout.geometry.PathData.PathDataException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The grammar is that of SVG 1.1, section 8.3.9. */
class PathDataTest {
  private static final List<Vec> SQUARE =
      List.of(new Vec(10, 20), new Vec(40, 20), new Vec(40, 50), new Vec(10, 50));

  private static Contour only(String data) throws PathDataException {
    List<Contour> contours = PathData.parse(data);
    assertEquals(1, contours.size());
    return contours.get(0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"M10 20L40 20L40 50L10 50Z", "M10,20 40,20 40,50 10,50z", "m10 20 30 0 0 30-30 0z",
      "M 10 20 H 40 V 50 H 10 V 20 Z", "m10,20h30v30h-30z", "M1e1 2E+1 H400e-1 V+50. h-30 Z",
      "\tM\n10\r20 l 30 , 0 0,30 -30 0", "M10 20h0v0h30v30h-30zM3 3z"})
  void writesOneSquareInManyWays(String data) throws PathDataException {
    assertEquals(SQUARE, only(data).points(0.01));
    assertEquals(900, only(data).signedArea());
  }

  @Test
  void readsCompactNumbersWithoutSeparators() throws PathDataException {
    assertEquals(List.of(new Vec(0.5, 0.25), new Vec(1.5, 0.5), new Vec(3, -3)),
        only("M.5.25L1.5.5 3-3Z").points(0.01));
  }

  @Test
  void repeatsACommandForFurtherArguments() throws PathDataException {
    assertEquals(only("M10 20H30H40V30V50H10Z"), only("M10 20H30 40V30 50H10Z"));
    assertEquals(only("m1 2l3 4l5 1l-2-9z"), only("m1 2 3 4 5 1-2-9z"));
    assertEquals(only("M0 0A5 5 0 0 1 5 5A5 5 0 0 1 0 10Z"), only("M0 0A5 5 0 0 1 5 5 5 5 0 0 1 0 10Z"));
  }

  @Test
  void readsEverySubpathAndClosesOpenOnes() throws PathDataException {
    List<Contour> contours = PathData.parse("M0 0H10V10M20 20h4v4h-4z");
    assertEquals(List.of(50.0, 16.0), contours.stream().map(Contour::signedArea).toList());
  }

  @Test
  void goesOnFromTheStartOfTheSubpathAfterClosing() throws PathDataException {
    List<Contour> contours = PathData.parse("M5 5h10v10z l0 -3 3 0z");
    assertEquals(List.of(new Vec(5, 5), new Vec(5, 2), new Vec(8, 2)), contours.get(1).points(0.01));
  }

  @Test
  void startsARelativeMoveFromTheEndOfTheSubpathBefore() throws PathDataException {
    List<Contour> contours = PathData.parse("M10 10h5v5zm1 2h1v1z");
    assertEquals(new Vec(11, 12), contours.get(1).segments().get(0).start());
  }

  @Test
  void turnsAShorthandCurveRoundItsLastControlPoint() throws PathDataException {
    assertEquals(only("M0 0C0 10 10 10 10 0C10 -10 20 -10 20 0Z"), only("M0 0C0 10 10 10 10 0S20-10 20 0Z"));
    assertEquals(only("M0 0c0 10 10 10 10 0c0 -10 10 -10 10 0z"), only("M0 0c0 10 10 10 10 0s10-10 10 0z"));
    assertEquals(only("M0 0Q5 10 10 0Q15 -10 20 0Q25 10 30 0Z"), only("M0 0Q5 10 10 0T20 0 30 0Z"));
    assertEquals(only("M0 0Q5 10 10 0Q15 -10 20 0Z"), only("M0 0q5 10 10 0t10 0z"));
  }

  @Test
  void takesThePointItselfAsControlPointAfterAnotherCommand() throws PathDataException {
    assertEquals(only("M0 0L10 0C10 0 20 10 20 0Z"), only("M0 0L10 0S20 10 20 0Z"));
    assertEquals(only("M0 0L10 0Q10 0 20 5L0 5Z"), only("M0 0L10 0T20 5L0 5Z"));
    assertEquals(only("M0 0Q5 9 10 0C10 0 20 10 20 0Z"), only("M0 0Q5 9 10 0S20 10 20 0Z"));
    assertEquals(only("M0 0C1 9 5 9 10 0Q10 0 20 5L0 5Z"), only("M0 0C1 9 5 9 10 0T20 5L0 5Z"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"M0 0C0 40 60 80 90 10L40 -30Z", "M5 5Q40 90 80 5T160 5L80 -60Z",
      "M0 0C100 100 -50 100 50 0S-20-70 0 0", "M-7 3c10 0 30 5 30 20s-10 20-30 20-30-5-30-20z"})
  void enclosesWhatJavaGeometryEncloses(String data) throws PathDataException {
    Contour contour = only(data);
    Path2D foreign = Foreign.path(contour);
    assertEquals(Foreign.area(foreign), contour.signedArea(), 2e-4 * contour.area());
    assertEquals(contour.box().width(), Foreign.tight(foreign).getWidth(), 0.001);
    assertEquals(contour.box().height(), Foreign.tight(foreign).getHeight(), 0.001);
  }

  @Test
  void leavesNoSliverWhereRelativeStepsCloseInexactly() throws PathDataException {
    Contour contour = only("m0.1 0.2 0.1 0.1 0.1 0.1 0.1-0.1 -0.3-0.1z");
    assertEquals(4, contour.segments().size());
    assertEquals(new Vec(0.1, 0.2), contour.segments().get(3).end());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"``|M", "L1 1|character 1", "M1|character 3",
      "M1 1L|character 6", "M1 1X|character 5", "M1 1L2 2,|character 10", "M,1 1|character 2", "M1 1L2,,2|character 8",
      "M1 1L2 2 3|character 11", "M1 1Z2|character 6", "M1 1A5 5 0 2 0 9 9|character 12", "M0 0L1.2.3.4|character 13",
      "M0 0L1 NaN|character 8", "M0 0L1e999 1|character 6", "M1 1|draws nothing", "M1 1L1 1Z|draws nothing",
      "M0 0L- 1|character 6", "M0 0L1 1e|character 9", "M9e307 0l9e307 9e307|character 9",
      "M0 0A1e308 1e308 0 1 1 5 5|character 5"})
  void saysAtWhichCharacterItCannotBeRead(String data, String place) {
    PathDataException e = assertThrows(PathDataException.class, () -> PathData.parse(data));
    assertTrue(e.getMessage().contains(place), e.getMessage());
  }
}
