// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import muralbench.base.InputException;
import muralbench.model.DisplayUnits;
import muralbench.model.FixedOrigin;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.model.RectangleOutline;
import muralbench.model.RepeatedOutline;
import muralbench.model.SharedLine;
import muralbench.model.SharedOrigin;
import muralbench.model.Surface;
import muralbench.model.TileKind;
import muralbench.setout.geometry.Box;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Panels A, B and C, each 600 by 400 mm, of tile 150 by 100 mm. */
class LinkedPanelsTest {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;
  private final Mural mural = MAKE.createMural();
  private Panel a;
  private Panel b;
  private Panel c;

  @BeforeEach
  void makePanels() {
    mural.setUnits(DisplayUnits.MILLIMETRES);
    TileKind tile = MAKE.createTileKind();
    tile.setId("T");
    tile.setWidth(150);
    tile.setHeight(100);
    mural.getTileKinds().add(tile);
    a = panel("A", 0);
    b = panel("B", 800);
    c = panel("C", 1600);
  }

  private Panel panel(String id, double x) {
    Panel panel = MAKE.createPanel();
    panel.setId(id);
    panel.setTileKind(mural.getTileKinds().get(0));
    panel.setJoint(3);
    panel.setOutline(rectangle(x, 900, 600, 400));
    panel.setBond(MAKE.createBond());
    panel.setOrigin(MAKE.createBalancedOrigin());
    mural.getPanels().add(panel);
    return panel;
  }

  private static RectangleOutline rectangle(double x, double y, double width, double height) {
    RectangleOutline rectangle = MAKE.createRectangleOutline();
    rectangle.setX(x);
    rectangle.setY(y);
    rectangle.setWidth(width);
    rectangle.setHeight(height);
    return rectangle;
  }

  private static void repeats(Panel panel, Panel other, double x, double y, boolean mirrored) {
    RepeatedOutline outline = MAKE.createRepeatedOutline();
    outline.setPanel(other);
    outline.setX(x);
    outline.setY(y);
    outline.setMirrored(mirrored);
    panel.setOutline(outline);
    panel.setTileKind(null);
    panel.setBond(null);
    panel.setOrigin(null);
  }

  private static void shares(Panel panel, Panel other, SharedLine line) {
    SharedOrigin origin = MAKE.createSharedOrigin();
    origin.setPanel(other);
    origin.setLine(line);
    panel.setOrigin(origin);
  }

  private static void outlet(Panel panel, String id, double x) {
    Opening opening = MAKE.createOpening();
    opening.setId(id);
    opening.setKind("outlet");
    opening.setOutline(rectangle(x, 1000, 60, 90));
    panel.getOpenings().add(opening);
  }

  private static OriginSpec.Shared shared(Panel panel) throws InputException {
    return assertInstanceOf(OriginSpec.Shared.class, MuralReader.panel(panel).origin());
  }

  private static List<String> ids(OriginSpec.Shared shared) {
    return shared.panels().stream().map(PanelSpec::id).toList();
  }

  private static void assertRefused(Panel panel, String message) {
    InputException e = assertThrows(InputException.class, () -> MuralReader.panel(panel));
    assertEquals(panel.getId(), e.place());
    assertTrue(e.getMessage().contains(message), e.getMessage());
  }

  @Test
  void aRepeatTakesEverythingButItsNameFromTheOther() throws InputException {
    outlet(a, "A1", 100);
    a.setEdgeGap(2);
    repeats(b, a, 2000, 700, true);
    b.setTitle("Sun");
    PanelSpec repeat = MuralReader.mural(mural).panels().get(1);
    assertEquals(new Box(2000, 700, 2600, 1100), repeat.outline().box());
    assertEquals("B-A1", repeat.openings().get(0).id());
    assertEquals(new Box(2600 - 160, 800, 2600 - 100, 890), repeat.openings().get(0).outline().box());
    assertEquals(List.of("Sun", "T", 3.0, 2.0),
        List.of(repeat.title(), repeat.tile().id(), repeat.joint(), repeat.edgeGap()));
    assertEquals(MuralReader.panel(a), ((OriginSpec.Repeated) repeat.origin()).panel());
  }

  @Test
  void aRepeatFollowsTheOther() throws InputException {
    repeats(b, a, 2000, 700, false);
    PanelSpec before = MuralReader.panel(b);
    a.setJoint(5);
    assertEquals(5, MuralReader.panel(b).joint());
    assertFalse(before.equals(MuralReader.panel(b)));
  }

  @Test
  void aRepeatOfARepeatHasNamesOfAll() throws InputException {
    outlet(a, "A1", 100);
    repeats(b, a, 2000, 900, true);
    repeats(c, b, 3000, 900, true);
    PanelSpec last = MuralReader.panel(c);
    assertEquals("C-B-A1", last.openings().get(0).id());
    assertEquals(new Box(3100, 1000, 3160, 1090), last.openings().get(0).outline().box());
  }

  @Test
  void derivedNamesOfOpeningsAreUniqueToo() {
    outlet(a, "A1", 100);
    outlet(c, "B-a1", 1700);
    repeats(b, a, 2000, 900, false);
    InputException e = assertThrows(InputException.class, () -> MuralReader.mural(mural));
    assertTrue(e.getMessage().contains("B-a1") && e.getMessage().contains("B-A1"), e.getMessage());
  }

  @Test
  void anOutlineIsThatOfTheOtherInItsPlace() throws InputException {
    repeats(b, a, 2000, 700, true);
    assertEquals(new Box(2000, 700, 2600, 1100), MuralReader.outline(b.getOutline(), "B").box());
  }

  @Test
  void circlesAreRefusedWithTheirPanels() {
    repeats(a, b, 0, 0, false);
    repeats(b, c, 0, 0, false);
    shares(c, a, SharedLine.GRID);
    assertRefused(a, "panels A, B, C take their layout or grid from each other in a circle");
    assertRefused(c, "panels C, A, B take");
    assertThrows(InputException.class, () -> MuralReader.mural(mural));
    shares(c, c, SharedLine.LEVEL);
    assertRefused(a, "panels C take their");
    repeats(a, a, 0, 0, false);
    assertThrows(InputException.class, () -> MuralReader.outline(a.getOutline(), "A"));
  }

  @Test
  void whatIsWrongWithTheOtherIsTold() {
    repeats(b, a, 2000, 900, false);
    shares(c, a, SharedLine.GRID);
    a.setJoint(-1);
    assertRefused(b, "the panel repeats panel A, where the joint is -1 mm; it must not be below 0. Type 0 or more.");
    assertRefused(c, "the panel has the grid of panel A, where the joint is -1 mm");
    shares(c, a, SharedLine.LEVEL);
    assertRefused(c, "the panel is level with panel A, where the joint is -1 mm");
  }

  @Test
  void whatIsNotThereIsTold() {
    repeats(b, null, 2000, 900, false);
    assertRefused(b, "the panel repeats another one that is not there");
    shares(c, null, SharedLine.GRID);
    assertRefused(c, "shares the grid of one that is not there");
    shares(c, null, SharedLine.LEVEL);
    assertRefused(c, "level with one that is not there");
  }

  @Test
  void aGridIsThatOfTheHeadOfTheRow() throws InputException {
    FixedOrigin origin = MAKE.createFixedOrigin();
    origin.setX(10);
    origin.setY(905);
    a.setOrigin(origin);
    shares(b, a, SharedLine.GRID);
    shares(c, b, SharedLine.GRID);
    for (Panel panel : mural.getPanels()) {
      assertEquals(List.of("A", "B", "C"), ids(shared(panel)));
      assertTrue(shared(panel).start().given());
      assertEquals(shared(a), shared(panel));
    }
  }

  @Test
  void aPanelAloneHasItsOwnOrigin() throws InputException {
    shares(b, a, SharedLine.LEVEL);
    assertEquals(new OriginSpec.Balanced(), MuralReader.panel(a).origin());
    assertEquals(MuralReader.panel(a), ((OriginSpec.Level) MuralReader.panel(b).origin()).with());
  }

  @Test
  void aGridRunsOnOnlyInTheSameTileJointAndBond() {
    shares(b, a, SharedLine.GRID);
    b.setJoint(4);
    assertRefused(b, "shares the grid of panel A, but its joint has another width. Make the joints equal");
    b.setJoint(3);
    b.getBond().setOffset(0.5);
    assertRefused(b, "its bond is another one");
    b.getBond().setOffset(0);
    TileKind other = EcoreUtil.copy(a.getTileKind());
    other.setHeight(101);
    b.setTileKind(other);
    assertRefused(b, "its tile is of another size");
    b.setSurface(Surface.FLOOR);
    assertRefused(b, "one of them lies on a floor");
  }

  @Test
  void aPanelThatDoesNotFitLeavesTheGridOfTheOthers() throws InputException {
    shares(b, a, SharedLine.GRID);
    shares(c, a, SharedLine.GRID);
    b.setJoint(4);
    assertEquals(List.of("A", "C"), ids(shared(a)));
    assertEquals(List.of("A", "C"), ids(shared(c)));
  }

  @Test
  void theGridOfARepeatIsNotShared() {
    repeats(b, a, 2000, 900, true);
    shares(c, b, SharedLine.GRID);
    assertRefused(c, "panel B, whose grid the panel shares, is a repeat of another");
  }

  @Test
  void aWallAndAFloorHaveNoLevelLineInCommon() {
    shares(b, a, SharedLine.LEVEL);
    b.setSurface(Surface.FLOOR);
    assertRefused(b, "to be level with panel A, but one of them lies on a floor");
  }

  @Test
  void aCopyStandsInForItsPanel() throws InputException {
    shares(b, a, SharedLine.GRID);
    Panel copy = EcoreUtil.copy(a);
    copy.setOutline(rectangle(50, 900, 600, 400));
    OriginSpec.Shared shared = assertInstanceOf(OriginSpec.Shared.class, MuralReader.panel(copy, a).origin());
    assertEquals(List.of(50.0, 800.0), shared.panels().stream().map(panel -> panel.outline().box().minX()).toList());
    Panel other = EcoreUtil.copy(b);
    assertEquals(shared(b), MuralReader.panel(other, b).origin());
  }

  @Test
  void openingsHaveOutlinesOfTheirOwn() {
    outlet(a, "A1", 100);
    RepeatedOutline outline = MAKE.createRepeatedOutline();
    outline.setPanel(b);
    a.getOpenings().get(0).setOutline(outline);
    InputException e = assertThrows(InputException.class, () -> MuralReader.mural(mural));
    assertEquals("A1", e.place());
    assertTrue(Stream.of("unknown kind", "Use a rectangle").allMatch(e.getMessage()::contains), e.getMessage());
  }
}
