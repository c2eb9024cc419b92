// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.model.DisplayUnits;
import muralbench.model.LevelLineOutline;
import muralbench.model.LevelStation;
import muralbench.model.MeasuredOutline;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.Surface;
import muralbench.model.TileKind;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Walls measured on site, from the model to the findings. */
class MeasuredOutlineTest {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;
  /** Corners worked backwards: the measurements are the distances between them. */
  private static final List<Vec> LEANING =
      List.of(new Vec(100, 900), new Vec(2500, 900), new Vec(2512, 2710), new Vec(94, 2690));

  private static MeasuredOutline measured(List<Vec> corners) {
    MeasuredOutline outline = MAKE.createMeasuredOutline();
    outline.setX(corners.get(0).x());
    outline.setY(corners.get(0).y());
    outline.setBottom(corners.get(0).distance(corners.get(1)));
    outline.setRight(corners.get(1).distance(corners.get(2)));
    outline.setTop(corners.get(2).distance(corners.get(3)));
    outline.setLeft(corners.get(3).distance(corners.get(0)));
    outline.setRising(corners.get(0).distance(corners.get(2)));
    outline.setFalling(corners.get(3).distance(corners.get(1)));
    outline.setRise(corners.get(1).y() - corners.get(0).y());
    return outline;
  }

  private static LevelLineOutline levelLine(double... alongDownUp) {
    LevelLineOutline line = MAKE.createLevelLineOutline();
    line.setX(100);
    line.setY(1900);
    for (int i = 0; i < alongDownUp.length; i += 3) {
      LevelStation station = MAKE.createLevelStation();
      station.setAlong(alongDownUp[i]);
      station.setDown(alongDownUp[i + 1]);
      station.setUp(alongDownUp[i + 2]);
      line.getStations().add(station);
    }
    return line;
  }

  private static Mural mural(Outline outline) {
    Mural mural = MAKE.createMural();
    mural.setUnits(DisplayUnits.MILLIMETRES);
    TileKind tile = MAKE.createTileKind();
    tile.setId("T");
    tile.setWidth(150);
    tile.setHeight(150);
    mural.getTileKinds().add(tile);
    Panel panel = MAKE.createPanel();
    panel.setId("A");
    panel.setTileKind(tile);
    panel.setJoint(3);
    panel.setOutline(outline);
    panel.setBond(MAKE.createBond());
    panel.setOrigin(MAKE.createBalancedOrigin());
    mural.getPanels().add(panel);
    return mural;
  }

  private static List<Finding> findings(Mural mural) throws InputException {
    MuralSetOut setOut = SetOut.mural(MuralReader.mural(mural), BondRegistry.standard(), Progress.NONE);
    return SetOutChecks.findings(setOut).stream().filter(finding -> finding.code().startsWith("survey.")).toList();
  }

  private static Finding only(String code, Mural mural) throws InputException {
    List<Finding> findings = findings(mural).stream().filter(finding -> finding.code().equals(code)).toList();
    assertEquals(1, findings.size(), findings::toString);
    return findings.get(0);
  }

  private static void assertCorners(List<Vec> expected, Outline outline) throws InputException {
    Contour contour = MuralReader.outline(outline, "A");
    assertEquals(expected.size(), contour.segments().size());
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(0, contour.segments().get(i).start().distance(expected.get(i)), 1e-5, "corner " + i);
    }
  }

  @Test
  void fourSidesAndDiagonalsGiveTheCornersBack() throws InputException {
    assertCorners(LEANING, measured(LEANING));
    List<Vec> rising = List.of(new Vec(0, 0), new Vec(3000, 35), new Vec(2990, 2400), new Vec(12, 2410));
    assertCorners(rising, measured(rising));
  }

  /** Corners, in, of a Gauss-Newton solution of the same six lengths in numpy, turned by the rise. */
  @Test
  void agreesWithAnotherLeastSquaresSolution() throws InputException {
    MeasuredOutline wall = measured(LEANING);
    double in = 25.4;
    wall.setX(0);
    wall.setY(0);
    wall.setBottom(96 * in);
    wall.setRight(72.125 * in);
    wall.setTop(96.1875 * in);
    wall.setLeft(72 * in);
    wall.setRising(120.25 * in);
    wall.setFalling(120 * in);
    wall.setRise(0.125 * in);
    double[][] corners = {{0, 0}, {96.005, 0.125}, {96.1142, 72.2537}, {-0.078, 72.0037}};
    Contour contour = MuralReader.outline(wall, "A");
    for (int i = 0; i < 4; i++) {
      Vec corner = contour.segments().get(i).start();
      assertEquals(corners[i][0], corner.x() / in, 1e-4);
      assertEquals(corners[i][1], corner.y() / in, 1e-4);
    }
  }

  @Test
  void stationsOnALevelLineGiveTheEdges() throws InputException {
    assertCorners(List.of(new Vec(100, 900), new Vec(1300, 896), new Vec(2500, 890), new Vec(2500, 2700),
        new Vec(1300, 3100), new Vec(100, 2690)), levelLine(0, 1000, 790, 1200, 1004, 1200, 2400, 1010, 800));
  }

  @Test
  void piecesFillTheMeasuredWall() throws InputException {
    PanelSetOut panel = SetOut.panel(MuralReader.panel(mural(measured(LEANING)).getPanels().get(0)),
        BondRegistry.standard(), Progress.NONE);
    // Shoelace formula on the four corners; each tile with its joints takes 153 by 153 mm.
    double area = 0.5 * ((2512 - 100) * (2690 - 900) - (94 - 2500) * (2710 - 900));
    double tiled = panel.pieces().stream().mapToDouble(Piece::area).sum();
    assertEquals(area * 150 * 150 / 153 / 153, tiled, 0.01 * area);
  }

  @Test
  void tellsWhatIsOutOfSquareLevelAndPlumbLargestFirst() throws InputException {
    Finding finding = only("survey.square", mural(measured(LEANING)));
    assertEquals(Grade.ADVICE, finding.grade());
    assertEquals("A", finding.place());
    assertEquals(20, (double) finding.values().get("top"), 1e-6);
    assertTrue(finding.message().contains("top side 20 mm higher at its right end"), finding.message());
    assertTrue(finding.message().contains("lower right corner 12 mm wider than square over 1810 mm"),
        finding.message());
    assertTrue(finding.message().contains("left side leans 6 mm to the left going up"), finding.message());
    assertTrue(finding.message().indexOf("20 mm") < finding.message().indexOf("12 mm"), finding.message());
  }

  @Test
  void aSquareWallHasNoFindings() throws InputException {
    assertEquals(List.of(), findings(mural(measured(
        List.of(new Vec(0, 0), new Vec(4000, 0), new Vec(4000, 3000), new Vec(0, 3000))))));
  }

  @Test
  void aFloorIsNeitherLevelNorPlumb() throws InputException {
    Mural mural = mural(measured(LEANING));
    mural.getPanels().get(0).setSurface(Surface.FLOOR);
    String message = only("survey.square", mural).message();
    assertTrue(message.contains("wider than square") && !message.contains("leans") && !message.contains("higher"),
        message);
  }

  /** In a square an error of one diagonal leaves a quarter on each diagonal; see SurveyTest, worked by hand there. */
  @Test
  void aMeasurementOverThreeTimesTheAccuracyIsAnError() throws InputException {
    MeasuredOutline wall =
        measured(List.of(new Vec(0, 0), new Vec(3000, 0), new Vec(3000, 3000), new Vec(0, 3000)));
    wall.setRising(wall.getRising() + 32);
    Finding finding = only("survey.misfit", mural(wall));
    assertEquals(Grade.ERROR, finding.grade());
    assertEquals(8, Math.abs((double) finding.values().get("off")), 0.1);
    assertTrue(finding.message().contains("diagonal from the lower left to the upper right measured 8"),
        finding.message());
    assertTrue(finding.message().contains("more than 6 mm") && !finding.message().contains("bottom"),
        finding.message());
  }

  @Test
  void anErrorSharedOutIsAWarning() throws InputException {
    MeasuredOutline wall =
        measured(List.of(new Vec(0, 0), new Vec(3000, 0), new Vec(3000, 3000), new Vec(0, 3000)));
    wall.setRising(wall.getRising() + 13);
    Finding finding = only("survey.misfit", mural(wall));
    assertEquals(Grade.WARNING, finding.grade());
    assertEquals(6.5, (double) finding.values().get("spread"), 0.05);
    wall.setRising(wall.getRising() - 2);
    assertTrue(findings(mural(wall)).stream().noneMatch(other -> other.code().equals("survey.misfit")));
  }

  @Test
  void aLevelLineHasNothingThatChecksIt() throws InputException {
    Finding finding = only("survey.unchecked", mural(levelLine(0, 1000, 2000, 4000, 1000, 2000)));
    assertEquals(Grade.ADVICE, finding.grade());
    // Euclid's 3-4-5, a thousandfold.
    assertTrue(finding.message().contains("upper right is 5000 mm"), finding.message());
  }

  static Stream<Arguments> impossible() {
    return Stream.of(with(w -> w.setBottom(0), "the bottom side is 0 mm; it must be above 0"),
        with(w -> w.setFalling(Double.NaN), "upper left to the lower right is not a number"),
        with(w -> w.setTop(-4), "the top side is -4 mm"), with(w -> w.setAccuracy(0), "the accuracy of the tape is 0"),
        with(w -> w.setRise(2400), "rises by 2400 mm, but is only 2400 mm long"),
        with(w -> w.setRising(9000), "does not fit the sides"), with(w -> w.setX(2e6), "over 1 km"));
  }

  private static Arguments with(Consumer<MeasuredOutline> change, String message) {
    MeasuredOutline wall = measured(LEANING);
    change.accept(wall);
    return Arguments.of(wall, message);
  }

  @ParameterizedTest
  @MethodSource("impossible")
  void namesThePanelAndTheMeasurementThatCannotBe(MeasuredOutline wall, String message) {
    InputException e = assertThrows(InputException.class, () -> MuralReader.mural(mural(wall)));
    assertEquals("A", e.place());
    assertTrue(e.getMessage().contains(message), e.getMessage());
  }

  @Test
  void stationsGoToTheRight() {
    InputException e = assertThrows(InputException.class,
        () -> MuralReader.mural(mural(levelLine(0, 1000, 800, 0, 1000, 800))));
    assertTrue(e.problem().contains("station 2") && e.place().equals("A"), e.getMessage());
    assertThrows(InputException.class, () -> MuralReader.mural(mural(levelLine(0, 1000, 800))));
  }
}
