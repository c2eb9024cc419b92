// SPDX-License-Identifier: EPL-2.0
package muralbench.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import muralbench.model.BalancedOrigin;
import muralbench.model.CircleOutline;
import muralbench.model.DisplayUnits;
import muralbench.model.Exposure;
import muralbench.model.FixedOrigin;
import muralbench.model.JointAxis;
import muralbench.model.LevelLineOutline;
import muralbench.model.LevelStation;
import muralbench.model.MeasuredOutline;
import muralbench.model.Mounting;
import muralbench.model.Mural;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.model.PathOutline;
import muralbench.model.PolygonOutline;
import muralbench.model.RectangleOutline;
import muralbench.model.RepeatedOutline;
import muralbench.model.SharedLine;
import muralbench.model.SharedOrigin;
import muralbench.model.Surface;
import muralbench.model.TileKind;
import muralbench.model.file.MuralFile;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BriefReaderTest {
  private static final String RECTANGLE = "\"rectangle\": [0, 36, 72, 48]";

  @Test
  void headOfTheMural() throws Exception {
    Mural mural = BriefReader.readText(Briefs.FULL);
    assertEquals("Harbour wall", mural.getTitle());
    assertEquals("Harbour office", mural.getClient());
    assertEquals("C", mural.getRevision());
    assertEquals(DisplayUnits.INCHES, mural.getUnits());
    assertEquals(Exposure.EXTERIOR_FROST, mural.getSite().getExposure());
  }

  @Test
  void tile() throws Exception {
    TileKind tile = BriefReader.readText(Briefs.FULL).getTileKinds().get(0);
    assertEquals("T6", tile.getId());
    assertEquals(152.4, tile.getWidth());
    assertEquals(152.4, tile.getHeight());
    assertEquals(9.525, tile.getThickness());
    assertEquals(0.79375, tile.getFacialVariation());
    assertEquals(0.3, tile.getWaterAbsorption());
    assertEquals("stoneware", tile.getBody());
  }

  @Test
  void panel() throws Exception {
    Mural mural = BriefReader.readText(Briefs.FULL);
    Panel panel = mural.getPanels().get(0);
    assertEquals("A", panel.getId());
    assertEquals("Low water", panel.getTitle());
    assertEquals(Surface.FLOOR, panel.getSurface());
    assertEquals(Mounting.REMOVABLE, panel.getMounting());
    assertSame(mural.getTileKinds().get(0), panel.getTileKind());
    assertEquals(3.175, panel.getJoint());
    assertEquals(1.5875, panel.getEdgeGap());
    assertRectangle(0, 914.4, 1828.8, 1219.2, (RectangleOutline) panel.getOutline());
  }

  @Test
  void opening() throws Exception {
    Opening opening = BriefReader.readText(Briefs.FULL).getPanels().get(0).getOpenings().get(0);
    assertEquals("A1", opening.getId());
    assertEquals("outlet", opening.getKind());
    assertRectangle(508, 1066.8, 57.15, 88.9, (RectangleOutline) opening.getOutline());
  }

  @Test
  void bondAndOrigin() throws Exception {
    Panel panel = BriefReader.readText(Briefs.FULL).getPanels().get(0);
    assertEquals("grid", panel.getBond().getKind());
    assertEquals(0.25, panel.getBond().getOffset());
    assertEquals(45, panel.getBond().getRotation());
    assertEquals("size", panel.getBond().getSettings().get(0).getName());
    assertEquals("2", panel.getBond().getSettings().get(0).getValue());
    assertEquals(304.8, ((FixedOrigin) panel.getOrigin()).getX());
    assertEquals(927.1, ((FixedOrigin) panel.getOrigin()).getY());
  }

  @Test
  void whatIsLeftOutOfTheMural() throws Exception {
    Mural mural = BriefReader.readText(Briefs.SHORT);
    assertNull(mural.getClient());
    assertEquals("1", mural.getRevision());
    assertEquals(DisplayUnits.INCHES, mural.getUnits());
    assertEquals(Exposure.INTERIOR_DRY, mural.getSite().getExposure());
    TileKind tile = mural.getTileKinds().get(0);
    assertEquals(0, tile.getThickness());
    assertEquals(0, tile.getFacialVariation());
    assertEquals(-1, tile.getWaterAbsorption());
  }

  @Test
  void whatIsLeftOutOfThePanel() throws Exception {
    Panel panel = BriefReader.readText(Briefs.SHORT).getPanels().get(0);
    assertEquals(Surface.WALL, panel.getSurface());
    assertEquals(Mounting.FIXED, panel.getMounting());
    assertEquals(0, panel.getEdgeGap());
    assertEquals(0, panel.getOpenings().size());
    assertEquals("grid", panel.getBond().getKind());
    assertEquals(0, panel.getBond().getOffset());
    assertEquals(0, panel.getBond().getRotation());
    assertTrue(panel.getOrigin() instanceof BalancedOrigin);
    assertEquals(List.of(), panel.getMovementJoints());
    assertEquals(false, panel.isMovementByRule());
  }

  private static Panel moving(String joints) throws Exception {
    return BriefReader.readText(Briefs.SHORT.replace("\"joint\":", "\"movementJoints\": " + joints + ", \"joint\":"))
        .getPanels().get(0);
  }

  @Test
  void takesMovementJointsByRuleOrAsTheyAreGiven() throws Exception {
    assertTrue(moving("\"by-rule\"").isMovementByRule());
    Panel kept = moving("\"by-rule\", \"focalAreas\": [{\"id\": \"heron\", \"rectangle\": [1, 2, 3, 4]}]");
    assertEquals(76.2, kept.getFocalAreas().get(0).getWidth(), 1e-9);
    Panel panel = moving("[{ \"axis\": \"horizontal\", \"at\": 48, \"width\": \"3/8\" }]");
    assertEquals(JointAxis.HORIZONTAL, panel.getMovementJoints().get(0).getAxis());
    assertEquals(1219.2, panel.getMovementJoints().get(0).getAt());
    assertEquals(9.525, panel.getMovementJoints().get(0).getWidth());
  }

  @Test
  void aBalancedOriginMayHaveAFocalPoint() throws Exception {
    String brief = Briefs.SHORT.replace("\"joint\"", "\"origin\": { \"focus\": [36, \"5 ft\"] }, \"joint\"");
    BalancedOrigin origin = (BalancedOrigin) BriefReader.readText(brief).getPanels().get(0).getOrigin();
    assertEquals(36 * 25.4, origin.getFocalX(), 1e-9);
    assertEquals(60 * 25.4, origin.getFocalY(), 1e-9);
  }

  @Test
  void panelsMayRepeatOneThatComesLater() throws Exception {
    Mural mural = BriefReader.readText(Briefs.SHORT.replace("\"panels\": [", "\"panels\": [ { \"id\": \"B\", "
        + "\"title\": \"Sun\", \"repeats\": \"A\", \"at\": [84, \"3 ft\"], \"mirrored\": true },"));
    Panel repeat = mural.getPanels().get(0);
    RepeatedOutline outline = (RepeatedOutline) repeat.getOutline();
    assertSame(mural.getPanels().get(1), outline.getPanel());
    assertEquals(84 * 25.4, outline.getX(), 1e-9);
    assertEquals(36 * 25.4, outline.getY(), 1e-9);
    assertEquals(true, outline.isMirrored());
    assertEquals("Sun", repeat.getTitle());
    assertNull(repeat.getTileKind());
    assertNull(repeat.getOrigin());
  }

  @ParameterizedTest
  @CsvSource({"gridOf,GRID", "levelWith,LEVEL"})
  void anOriginMayBeSharedWithAnotherPanel(String field, SharedLine line) throws Exception {
    String panel = Briefs.SHORT.substring(Briefs.SHORT.indexOf("{ \"id\": \"A\""), Briefs.SHORT.lastIndexOf(" ]"));
    String other = panel.replace("\"A\"", "\"B\", \"origin\": { \"" + field + "\": \"A\" }");
    Mural mural = BriefReader.readText(Briefs.SHORT.replace(panel, panel + ", " + other));
    SharedOrigin origin = (SharedOrigin) mural.getPanels().get(1).getOrigin();
    assertSame(mural.getPanels().get(0), origin.getPanel());
    assertEquals(line, origin.getLine());
  }

  @Test
  void withoutAFocalPointItStaysUnset() throws Exception {
    BalancedOrigin origin = (BalancedOrigin) BriefReader.readText(Briefs.SHORT).getPanels().get(0).getOrigin();
    assertEquals(false, origin.isSetFocalX() || origin.isSetFocalY());
  }

  /** The forms the contract of the brief lists, worked out by hand from 1 in = 25.4 mm. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
    "\"5 ft 3 1/2 in\"|1612.9", "\"5' 3-1/2\\\"\"|1612.9", "\"63.5 in\"|1612.9", "\"1/8\"|3.175",
    "\"1600 mm\"|1600", "\"1.6 m\"|1600", "63.5|1612.9", "1e1|254", "0.1|2.54"})
  void lengthsAreNumbersOrTexts(String length, double millimetres) throws Exception {
    String brief = Briefs.SHORT.replace("36, 72, 48", "36, " + length + ", 48");
    RectangleOutline outline = (RectangleOutline) BriefReader.readText(brief).getPanels().get(0).getOutline();
    assertEquals(millimetres, outline.getWidth());
  }

  @Test
  void bareNumbersAreMillimetresInAMetricBrief() throws Exception {
    String brief = Briefs.SHORT.replace("\"title\"", "\"units\": \"mm\", \"title\"").replace("\"width\": 6",
        "\"width\": \"6 in\"");
    Mural mural = BriefReader.readText(brief);
    assertEquals(DisplayUnits.MILLIMETRES, mural.getUnits());
    assertEquals(152.4, mural.getTileKinds().get(0).getWidth());
    assertEquals(6, mural.getTileKinds().get(0).getHeight());
    assertRectangle(0, 36, 72, 48, (RectangleOutline) mural.getPanels().get(0).getOutline());
  }

  @Test
  void polygon() throws Exception {
    String brief = Briefs.SHORT.replace(RECTANGLE, "\"polygon\": [[0, -1], [\"1 m\", 0], [10, 10]]");
    PolygonOutline polygon = (PolygonOutline) BriefReader.readText(brief).getPanels().get(0).getOutline();
    assertEquals(3, polygon.getPoints().size());
    assertEquals(-25.4, polygon.getPoints().get(0).getY());
    assertEquals(1000, polygon.getPoints().get(1).getX());
  }

  @Test
  void circle() throws Exception {
    String brief = Briefs.SHORT.replace(RECTANGLE, "\"circle\": [30, 60, \"2 ft 6 in\"]");
    CircleOutline circle = (CircleOutline) BriefReader.readText(brief).getPanels().get(0).getOutline();
    assertEquals(762, circle.getCentreX());
    assertEquals(1524, circle.getCentreY());
    assertEquals(762, circle.getRadius());
  }

  @Test
  void measuredWall() throws Exception {
    String brief = Briefs.SHORT.replace(RECTANGLE, """
        "measured": { "at": [1, 2], "bottom": 96, "right": 72, "top": "8 ft", "left": "6 ft", "rising": 120,
          "falling": "3048 mm", "rise": "-1/4", "accuracy": "1/16" }""");
    MeasuredOutline wall = (MeasuredOutline) BriefReader.readText(brief).getPanels().get(0).getOutline();
    assertEquals(List.of(25.4, 50.8), List.of(wall.getX(), wall.getY()));
    assertEquals(List.of(2438.4, 1828.8, 2438.4, 1828.8),
        List.of(wall.getBottom(), wall.getRight(), wall.getTop(), wall.getLeft()));
    assertEquals(List.of(3048.0, 3048.0, -6.35, 1.5875),
        List.of(wall.getRising(), wall.getFalling(), wall.getRise(), wall.getAccuracy()));
  }

  @Test
  void measuredWallByAnOrdinaryTapeOnALevelBase() throws Exception {
    String brief = Briefs.SHORT.replace(RECTANGLE, "\"measured\": { \"at\": [0, 0], \"bottom\": 4, \"right\": 3, "
        + "\"top\": 4, \"left\": 3, \"rising\": 5, \"falling\": 5 }");
    MeasuredOutline wall = (MeasuredOutline) BriefReader.readText(brief).getPanels().get(0).getOutline();
    assertEquals(List.of(0.0, 2.0), List.of(wall.getRise(), wall.getAccuracy()));
  }

  @Test
  void levelLine() throws Exception {
    String brief = Briefs.SHORT.replace(RECTANGLE,
        "\"levelLine\": { \"at\": [0, 48], \"stations\": [[0, 12, 36], [\"1 m\", 12.5, -6]] }");
    LevelLineOutline line = (LevelLineOutline) BriefReader.readText(brief).getPanels().get(0).getOutline();
    assertEquals(1219.2, line.getY());
    LevelStation last = line.getStations().get(1);
    assertEquals(List.of(2, 1000.0, 317.5, -152.4),
        List.of(line.getStations().size(), last.getAlong(), last.getDown(), last.getUp()));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"in|M 0 0 L 254 0 A 254 127 30 0 1 0 254 Z", "mm|M0,0 10,0A10,5 30 01 0 10Z"})
  void pathIsStoredInMillimetres(String units, String data) throws Exception {
    String brief = Briefs.SHORT.replace("\"title\"", "\"units\": \"" + units + "\", \"title\"").replace(RECTANGLE,
        "\"path\": \"M0,0 10,0A10,5 30 01 0 10Z\"").replace("0.125", "\"1 mm\"");
    PathOutline path = (PathOutline) BriefReader.readText(brief).getPanels().get(0).getOutline();
    assertEquals(data.replace("L 254", "254"), path.getData());
  }

  @ParameterizedTest
  @CsvSource({"1/2,0.5", "1/3,0.3333333333333333", "-1/4,-0.25"})
  void offsetMayBeAFraction(String fraction, double offset) throws Exception {
    String brief = Briefs.FULL.replace("0.25", "\"" + fraction + "\"");
    assertEquals(offset, BriefReader.readText(brief).getPanels().get(0).getBond().getOffset());
  }

  @Test
  void byteOrderMarkIsNoPartOfTheText() throws Exception {
    assertEquals("Harbour wall", BriefReader.readText("\uFEFF" + Briefs.SHORT).getTitle());
  }

  @Test
  void fileIsReadAsUtf8(@TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("b.json"), Briefs.SHORT.replace("Harbour", "Žďár – 港"));
    assertEquals("Žďár – 港 wall", BriefReader.read(file).getTitle());
  }

  @Test
  void muralCanBeSaved(@TempDir Path folder) throws Exception {
    Mural mural = BriefReader.readText(Briefs.FULL);
    MuralFile.write(mural, folder.resolve("b.mural"));
    assertTrue(EcoreUtil.equals(mural, MuralFile.read(folder.resolve("b.mural"))));
  }

  private static void assertRectangle(double x, double y, double width, double height, RectangleOutline rectangle) {
    assertEquals(x, rectangle.getX());
    assertEquals(y, rectangle.getY());
    assertEquals(width, rectangle.getWidth());
    assertEquals(height, rectangle.getHeight());
  }
}
