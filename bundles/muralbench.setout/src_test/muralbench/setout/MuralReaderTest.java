// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.model.BalancedOrigin;
import muralbench.model.BoardMaterial;
import muralbench.model.DisplayUnits;
import muralbench.model.Exposure;
import muralbench.model.FixedOrigin;
import muralbench.model.JointAxis;
import muralbench.model.Mounting;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Opening;
import muralbench.model.Outline;
import muralbench.model.Painting;
import muralbench.model.Panel;
import muralbench.model.PathOutline;
import muralbench.model.PolygonOutline;
import muralbench.model.RectangleOutline;
import muralbench.model.Setting;
import muralbench.model.Spare;
import muralbench.model.Surface;
import muralbench.model.TileKind;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;
import muralbench.setout.movement.MovementAxis;
import muralbench.setout.movement.MovementJoint;
import muralbench.setout.movement.MovementRule;
import muralbench.setout.movement.MovementSpec;
import muralbench.setout.order.Allowances;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MuralReaderTest {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;

  private static RectangleOutline rectangle(double x, double y, double width, double height) {
    RectangleOutline rectangle = MAKE.createRectangleOutline();
    rectangle.setX(x);
    rectangle.setY(y);
    rectangle.setWidth(width);
    rectangle.setHeight(height);
    return rectangle;
  }

  private static PolygonOutline polygon(double... coordinates) {
    PolygonOutline polygon = MAKE.createPolygonOutline();
    for (int i = 0; i < coordinates.length; i += 2) {
      polygon.getPoints().add(MAKE.createPoint());
      polygon.getPoints().get(i / 2).setX(coordinates[i]);
      polygon.getPoints().get(i / 2).setY(coordinates[i + 1]);
    }
    return polygon;
  }

  private static PathOutline path(String data) {
    PathOutline path = MAKE.createPathOutline();
    path.setData(data);
    return path;
  }

  /** Panel A of 600 by 400 mm with opening A1, tile T6 of 150 by 100, joint 3. */
  private static Mural mural() {
    Mural mural = MAKE.createMural();
    mural.setUnits(DisplayUnits.MILLIMETRES);
    mural.getTileKinds().add(tile("T6"));
    mural.getPanels().add(panel(mural, "A"));
    return mural;
  }

  private static TileKind tile(String id) {
    TileKind tile = MAKE.createTileKind();
    tile.setId(id);
    tile.setWidth(150);
    tile.setHeight(100);
    return tile;
  }

  private static Panel panel(Mural mural, String id) {
    Panel panel = MAKE.createPanel();
    panel.setId(id);
    panel.setTileKind(mural.getTileKinds().get(0));
    panel.setJoint(3);
    panel.setOutline(rectangle(0, 900, 600, 400));
    panel.setBond(MAKE.createBond());
    panel.setOrigin(MAKE.createBalancedOrigin());
    Opening opening = MAKE.createOpening();
    opening.setId(id + "1");
    opening.setKind("outlet");
    opening.setOutline(rectangle(100, 1000, 60, 90));
    panel.getOpenings().add(opening);
    return panel;
  }

  @Test
  void readsAPanelWithEverythingSet() throws InputException {
    Mural mural = mural();
    Panel panel = mural.getPanels().get(0);
    panel.setTitle("Low water");
    panel.setSurface(Surface.FLOOR);
    panel.setMounting(Mounting.REMOVABLE);
    panel.setEdgeGap(2);
    PanelSpec spec = MuralReader.panel(panel);
    assertEquals(List.of("A", "Low water", "floor", "removable"),
        List.of(spec.id(), spec.title(), spec.surface(), spec.mounting()));
    assertEquals(new TileSpec("T6", 150, 100, 0, 0, -1), spec.tile());
    assertEquals(List.of(3.0, 2.0), List.of(spec.joint(), spec.edgeGap()));
    assertEquals(Contour.rectangle(0, 900, 600, 400), spec.outline());
    assertEquals(List.of(new OpeningSpec("A1", "outlet", Contour.rectangle(100, 1000, 60, 90))), spec.openings());
    assertEquals(BondSpec.grid(), spec.bond());
    assertEquals(new OriginSpec.Balanced(), spec.origin());
  }

  @Test
  void readsHowPiecesAreMadeAndTheBoard() throws InputException {
    Mural mural = mural();
    Panel panel = mural.getPanels().get(0);
    assertEquals(MakingSpec.beforeCutting(), MuralReader.panel(panel).making());
    assertEquals(BoardSpec.usual(), MuralReader.panel(panel).board());
    mural.setMaking(MAKE.createMaking());
    mural.getMaking().setPainted(Painting.AFTER_CUTTING);
    mural.getMaking().setFactoryTop(false);
    panel.setBoard(MAKE.createBackingBoard());
    panel.getBoard().setMaterial(BoardMaterial.PLYWOOD);
    PanelSpec spec = MuralReader.panel(panel);
    assertEquals(new MakingSpec(true, 1.5875, Set.of(FaceSide.LEFT, FaceSide.RIGHT, FaceSide.BOTTOM)), spec.making());
    assertEquals(new BoardSpec("plywood", 0, 0, 0, "none", 0), spec.board());
  }

  @Test
  void readsSparesBoxesAndTheSwingOfTemperature() throws InputException {
    Mural mural = mural();
    mural.getTileKinds().get(0).setBox(25);
    Spare spare = MAKE.createSpare();
    spare.setBond("grid");
    spare.setPercent(12.5);
    mural.getSpares().add(spare);
    mural.setSite(MAKE.createSite());
    mural.getSite().setTemperatureSwing(60);
    MuralSpec spec = MuralReader.mural(mural);
    assertEquals(Allowances.commonPractice().withPercent("grid", new BigDecimal("12.5")).withBox("T6", 25),
        spec.allowances());
    assertEquals(60, spec.temperatureSwing());
  }

  static Stream<Consumer<Mural>> whatCannotBeMade() {
    return Stream.of(mural -> mural.getTileKinds().get(0).setBox(-1),
        mural -> mural.getSpares().add(MAKE.createSpare()),
        mural -> mural.getTileKinds().get(0).setExpansion(Double.NaN), mural -> {
          mural.setMaking(MAKE.createMaking());
          mural.getMaking().setKerf(-1);
        }, mural -> {
          mural.getPanels().get(0).setBoard(MAKE.createBackingBoard());
          mural.getPanels().get(0).getBoard().setMaterial(BoardMaterial.OTHER);
        }, mural -> {
          mural.setSite(MAKE.createSite());
          mural.getSite().setTemperatureSwing(-5);
        });
  }

  @ParameterizedTest
  @MethodSource("whatCannotBeMade")
  void refusesWhatCannotBeMade(Consumer<Mural> change) {
    Mural mural = mural();
    change.accept(mural);
    assertThrows(InputException.class, () -> MuralReader.mural(mural));
  }

  @Test
  void readsAFocalPointOrRefusesHalfOfOne() throws InputException {
    Panel panel = mural().getPanels().get(0);
    BalancedOrigin origin = MAKE.createBalancedOrigin();
    panel.setOrigin(origin);
    origin.setFocalX(0);
    assertThrows(InputException.class, () -> MuralReader.panel(panel));
    origin.setFocalY(1000);
    assertEquals(new OriginSpec.Balanced(Optional.of(new Vec(0, 1000))), MuralReader.panel(panel).origin());
  }

  @Test
  void readsBondSettingsAndAFixedOrigin() throws InputException {
    Panel panel = mural().getPanels().get(0);
    panel.getBond().setKind("running");
    panel.getBond().setOffset(0.5);
    panel.getBond().setRotation(-45);
    Setting setting = MAKE.createSetting();
    setting.setName("step");
    setting.setValue("2");
    panel.getBond().getSettings().add(setting);
    FixedOrigin origin = MAKE.createFixedOrigin();
    origin.setX(10);
    origin.setY(-20);
    panel.setOrigin(origin);
    PanelSpec spec = MuralReader.panel(panel);
    assertEquals(new BondSpec("running", 0.5, -45, Map.of("step", "2")), spec.bond());
    assertEquals(new OriginSpec.At(new Vec(10, -20)), spec.origin());
  }

  @Test
  void readsTheTitleBlockAndTheSite() throws InputException {
    Mural mural = mural();
    mural.setTitle("Harbour wall");
    mural.setUnits(DisplayUnits.INCHES);
    mural.setSite(MAKE.createSite());
    mural.getSite().setExposure(Exposure.EXTERIOR_FROST);
    MuralSpec spec = MuralReader.mural(mural);
    assertEquals(List.of("Harbour wall", "", "1", "exterior-frost"),
        List.of(spec.title(), spec.client(), spec.revision(), spec.exposure()));
    assertEquals(LengthUnit.INCH, spec.units());
    assertEquals("A", spec.panels().get(0).id());
  }

  @Test
  void takesAMuralWithoutASiteAsDryInside() throws InputException {
    assertEquals("interior-dry", MuralReader.mural(mural()).exposure());
  }

  @ParameterizedTest
  @MethodSource
  void readsEveryOutlineCounterClockwise(Outline outline, double area) throws InputException {
    assertEquals(area, MuralReader.outline(outline, "A").signedArea(), 1e-9);
  }

  static Stream<Arguments> readsEveryOutlineCounterClockwise() {
    var circle = MAKE.createCircleOutline();
    circle.setCentreX(500);
    circle.setRadius(100);
    return Stream.of(Arguments.of(rectangle(1, 2, 3, 4), 12), Arguments.of(circle, Math.PI * 1e4),
        Arguments.of(polygon(0, 0, 0, 10, 10, 10, 10, 0), 100), Arguments.of(path("M0 0V10H10V0Z"), 100));
  }

  @Test
  void dropsRepeatedCornersOfAPolygon() throws InputException {
    Contour contour = MuralReader.outline(polygon(0, 0, 10, 0, 10, 0, 10, 10, -0.0, 0), "A");
    assertEquals(Contour.polygon(List.of(new Vec(10, 0), new Vec(10, 10), new Vec(0, 0))), contour);
  }

  /** What is broken in the mural above, the place that is blamed and a word of the message. */
  record Broken(String place, String word, Consumer<Mural> breaking) {
    @Override
    public String toString() {
      return place + ": " + word;
    }

    static Broken panel(String word, Consumer<Panel> breaking) {
      return new Broken("A", word, mural -> breaking.accept(mural.getPanels().get(0)));
    }

    static Broken tile(String word, Consumer<TileKind> breaking) {
      return new Broken("T6", word, mural -> breaking.accept(mural.getTileKinds().get(0)));
    }

    static Broken outline(String word, Outline outline) {
      return panel(word, panel -> panel.setOutline(outline));
    }
  }

  static Stream<Broken> refusesWhatNoWallCanHave() {
    return Stream.of(Broken.panel("no tile kind", panel -> panel.setTileKind(null)),
        Broken.panel("no bond", panel -> panel.setBond(null)),
        Broken.panel("no origin", panel -> panel.setOrigin(null)),
        Broken.panel("no outline", panel -> panel.setOutline(null)),
        Broken.panel("the joint is -1 mm", panel -> panel.setJoint(-1)),
        Broken.panel("the joint is not a number", panel -> panel.setJoint(Double.NaN)),
        Broken.panel("the joint of 100 mm is as wide as the tile", panel -> panel.setJoint(100)),
        Broken.panel("the gap at the edge", panel -> panel.setEdgeGap(-0.5)),
        Broken.panel("the offset of the bond", panel -> panel.getBond().setOffset(Double.NaN)),
        Broken.panel("the rotation", panel -> panel.getBond().setRotation(Double.POSITIVE_INFINITY)),
        Broken.panel("no name", panel -> panel.getBond().getSettings().add(MAKE.createSetting())),
        Broken.tile("the width of the tile is 0 mm", tile -> tile.setWidth(0)),
        Broken.tile("the height of the tile is -5 mm", tile -> tile.setHeight(-5)),
        Broken.tile("over 1 km", tile -> tile.setHeight(1e300)),
        Broken.tile("thickness", tile -> tile.setThickness(-1)),
        Broken.tile("facial size", tile -> tile.setFacialVariation(Double.NaN)),
        Broken.tile("water absorption", tile -> tile.setWaterAbsorption(Double.NaN)));
  }

  static Stream<Broken> refusesOutlinesNoWallCanHave() {
    return Stream.of(Broken.outline("the width is 0 mm", rectangle(0, 0, 0, 5)),
        Broken.outline("the height is not a number", rectangle(0, 0, 5, Double.NaN)),
        Broken.outline("the left edge", rectangle(-1e300, 0, 5, 5)),
        Broken.outline("radius", MAKE.createCircleOutline()),
        Broken.outline("2 different corners", polygon(0, 0, 5, 5, 0, 0, 5, 5)),
        Broken.outline("corner 2", polygon(0, 0, 5, Double.NaN, 0, 5)),
        Broken.outline("2 separate parts", path("M0 0H9V9ZM20 0H29V9Z")),
        Broken.outline("character 6", path("M0 0 X")),
        Broken.outline("empty", path(null)), Broken.outline("a point of the path", path("M0 0H2e6V9Z")),
        new Broken("A1", "no outline", mural -> mural.getPanels().get(0).getOpenings().get(0).setOutline(null)),
        new Broken("A1", "radius", mural -> mural.getPanels().get(0).getOpenings().get(0).setOutline(
            MAKE.createCircleOutline())));
  }

  static Stream<Broken> refusesMissingAndRepeatedIds() {
    return Stream.of(new Broken("", "panel has no id", mural -> mural.getPanels().get(0).setId(null)),
        new Broken("", "tile kind has no id", mural -> mural.getTileKinds().get(0).setId(" ")),
        new Broken("A", "opening of panel A", mural -> mural.getPanels().get(0).getOpenings().get(0).setId("")),
        new Broken("A", "used before", mural -> mural.getPanels().add(panel(mural, "A"))),
        new Broken("a1", "\"A1\" only in capital", mural -> {
          mural.getPanels().add(panel(mural, "a1"));
          mural.getPanels().get(1).getOpenings().clear();
        }),
        new Broken("Low water", "cannot be that of a panel", mural -> mural.getPanels().get(0).setId("Low water")),
        new Broken("T6", "two tile kinds", mural -> mural.getTileKinds().add(tile("T6"))),
        new Broken("A1", "used before", mural -> {
          mural.getPanels().add(panel(mural, "B"));
          mural.getPanels().get(1).getOpenings().get(0).setId("A1");
        }));
  }

  @ParameterizedTest
  @MethodSource({"refusesWhatNoWallCanHave", "refusesOutlinesNoWallCanHave", "refusesMissingAndRepeatedIds"})
  void refuses(Broken broken) {
    Mural mural = mural();
    broken.breaking().accept(mural);
    InputException e = assertThrows(InputException.class, () -> MuralReader.mural(mural));
    assertEquals(broken.place(), e.place());
    assertTrue(e.problem().contains(broken.word()), e.getMessage());
    assertTrue(e.remedy().endsWith("."), e.getMessage());
  }

  @Test
  void speaksInTheUnitsOfTheMural() {
    Mural mural = mural();
    mural.setUnits(DisplayUnits.INCHES);
    mural.getPanels().get(0).setJoint(-3.175);
    InputException e = assertThrows(InputException.class, () -> MuralReader.mural(mural));
    assertTrue(e.problem().contains("-1/8 in"), e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " "})
  void refusesAPanelWithoutAnIdByItself(String id) {
    Panel panel = mural().getPanels().get(0);
    panel.setId(id);
    assertThrows(InputException.class, () -> MuralReader.panel(panel));
  }

  @Test
  void movementJointsAreThoseOfTheModel() throws InputException {
    Panel panel = mural().getPanels().get(0);
    assertEquals(new MovementSpec.None(), MuralReader.panel(panel).movement());
    muralbench.model.MovementJoint joint = MAKE.createMovementJoint();
    joint.setAxis(JointAxis.HORIZONTAL);
    joint.setAt(200);
    joint.setWidth(10);
    panel.getMovementJoints().add(joint);
    MovementJoint expected = new MovementJoint(MovementAxis.HORIZONTAL, 200, 10);
    assertEquals(new MovementSpec.Given(List.of(expected)), MuralReader.panel(panel).movement());
    joint.setWidth(0);
    assertThrows(InputException.class, () -> MuralReader.panel(panel));
  }

  @Test
  void movementJointsByRuleFollowTheExposureOfTheMural() throws InputException {
    Mural mural = mural();
    mural.setSite(MAKE.createSite());
    mural.getSite().setExposure(Exposure.EXTERIOR);
    mural.getPanels().get(0).setMovementByRule(true);
    assertEquals(new MovementSpec.ByRule(MovementRule.of("exterior", "wall"), 100),
        MuralReader.mural(mural).panels().get(0).movement());
  }
}
