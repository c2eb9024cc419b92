// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.editor.internal.PanelTask;
import muralbench.editor.internal.commands.AddPanelCommand;
import muralbench.editor.internal.commands.DeleteCommand;
import muralbench.editor.internal.commands.OwnLayout;
import muralbench.editor.internal.commands.PlaceCommand;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.editor.internal.geometry.Placement;
import muralbench.model.BalancedOrigin;
import muralbench.model.FixedOrigin;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.model.RectangleOutline;
import muralbench.model.RepeatedOutline;
import muralbench.model.SharedLine;
import muralbench.model.SharedOrigin;
import muralbench.setout.MuralReader;
import muralbench.setout.Piece;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** Panels of the sample wall that take something from others: A is a rectangle with an outlet, B an arch. */
class LinkedPanelsTest {
  private final OpenMural open = SampleMural.open();
  private final Mural mural = open.mural();
  private final Panel a = mural.getPanels().get(0);
  private final Panel b = mural.getPanels().get(1);

  private Panel repeat(Panel panel, boolean mirrored) {
    open.execute(RepeatedPanel.command(mural, panel, mirrored));
    return mural.getPanels().get(mural.getPanels().size() - 1);
  }

  private static RepeatedOutline outline(Panel panel) {
    return assertInstanceOf(RepeatedOutline.class, panel.getOutline());
  }

  private static void share(Panel panel, Panel other, SharedLine line) {
    SharedOrigin origin = MuralFactory.eINSTANCE.createSharedOrigin();
    origin.setPanel(other);
    origin.setLine(line);
    panel.setOrigin(origin);
  }

  private List<String> pieces(Panel panel) {
    return open.setOut(panel).orElseThrow().pieces().stream().map(LinkedPanelsTest::text).sorted().toList();
  }

  /** A piece by key, kind and box, to 0.001 mm. */
  private static String text(Piece piece) {
    return piece.key() + " " + piece.kind() + " " + Math.round(piece.box().minX() * 1000 + 0.123) + " "
        + Math.round(piece.box().minY() * 1000 + 0.123) + " " + Math.round(piece.box().maxX() * 1000 + 0.123) + " "
        + Math.round(piece.box().maxY() * 1000 + 0.123);
  }

  private void delete(Panel... panels) {
    open.execute(new DeleteCommand(mural, List.of(panels)));
  }

  @Test
  void aRepeatStandsFreeOnTheRightAndHasKeysOfItsOwn() {
    Panel repeat = repeat(a, false);
    assertEquals("E", repeat.getId());
    assertSame(a, outline(repeat).getPanel());
    Frame place = Placement.frame(repeat).orElseThrow();
    assertEquals(Placement.frame(a).orElseThrow().width(), place.width());
    mural.getPanels().stream().filter(panel -> panel != repeat).map(panel -> Placement.frame(panel).orElseThrow())
        .forEach(frame -> assertFalse(frame.x() < place.right() && place.x() < frame.right()
            && frame.y() < place.top() && place.y() < frame.top()));
    assertEquals(pieces(a).size(), pieces(repeat).size());
    assertTrue(pieces(repeat).get(0).startsWith("E-01-01"));
    assertEquals("Repeat panel A", open.commandStack().getUndoCommand().getLabel());
    open.commandStack().undo();
    assertEquals(4, mural.getPanels().size());
  }

  @Test
  void aRepeatFollowsItsOriginal() {
    Panel repeat = repeat(a, true);
    int before = pieces(repeat).size();
    open.execute(ModelCommand.of("tile", mural, () -> mural.getTileKinds().get(0).setWidth(100)));
    assertEquals(pieces(a).size(), pieces(repeat).size());
    assertTrue(before < pieces(repeat).size());
  }

  @Test
  void aRepeatIsMovedAndNotStretched() {
    Panel repeat = repeat(a, true);
    Frame from = Placement.frame(repeat).orElseThrow();
    open.execute(new PlaceCommand(mural, List.of(new PlaceCommand.Place(repeat, from, from.moved(10, 20)))));
    assertEquals(from.moved(10, 20), Placement.frame(repeat).orElseThrow());
    open.execute(new PlaceCommand(mural,
        List.of(new PlaceCommand.Place(repeat, from, new Frame(from.x(), from.y(), 10, 10)))));
    assertEquals(from.moved(10, 20), Placement.frame(repeat).orElseThrow());
  }

  @Test
  void whenTheOriginalGoesARepeatTakesItsPlace() {
    Panel mirrored = repeat(a, true);
    Panel repeat = repeat(a, false);
    List<String> before = pieces(repeat);
    List<String> image = pieces(mirrored);
    Mural whole = EcoreUtil.copy(mural);
    delete(a);
    assertInstanceOf(RectangleOutline.class, repeat.getOutline());
    assertEquals(before, pieces(repeat));
    assertSame(repeat, outline(mirrored).getPanel());
    assertTrue(outline(mirrored).isMirrored());
    assertEquals(image, pieces(mirrored));
    open.commandStack().undo();
    assertTrue(EcoreUtil.equals(whole, mural));
  }

  @Test
  void aMirroredHeirHasTheMirrorImage() {
    a.setOrigin(fixed(30, 950));
    Panel mirrored = repeat(a, true);
    Panel second = repeat(a, true);
    List<String> image = pieces(mirrored);
    List<String> other = pieces(second);
    delete(a);
    assertEquals(image, pieces(mirrored));
    assertEquals(other, pieces(second));
    assertFalse(outline(second).isMirrored());
    assertEquals(List.of("E1"), mirrored.getOpenings().stream().map(Opening::getId).toList());
  }

  private static FixedOrigin fixed(double x, double y) {
    FixedOrigin origin = MuralFactory.eINSTANCE.createFixedOrigin();
    origin.setX(x);
    origin.setY(y);
    return origin;
  }

  @Test
  void aRepeatOfARepeatThatGoesRepeatsTheOriginal() {
    Panel once = repeat(a, true);
    Panel twice = repeat(once, true);
    List<String> before = pieces(twice);
    delete(once);
    assertSame(a, outline(twice).getPanel());
    assertFalse(outline(twice).isMirrored());
    assertEquals(before, pieces(twice));
  }

  @Test
  void allOfARowMayGo() {
    Panel once = repeat(a, false);
    Panel twice = repeat(once, false);
    List<String> before = pieces(twice);
    delete(a, once);
    assertEquals(before, pieces(twice));
    assertEquals(4, mural.getPanels().size());
  }

  @Test
  void aGridGoesOnWhenItsHeadGoes() {
    a.setOrigin(fixed(30, 950));
    share(b, a, SharedLine.GRID);
    Panel c = mural.getPanels().get(2);
    share(c, a, SharedLine.LEVEL);
    open.execute(ModelCommand.of("title", mural, () -> a.setTitle("x")));
    List<String> before = pieces(c);
    delete(a);
    assertEquals(30, assertInstanceOf(FixedOrigin.class, b.getOrigin()).getX());
    assertSame(b, ((SharedOrigin) c.getOrigin()).getPanel());
    assertEquals(before, pieces(c));
  }

  @Test
  void whatWasLevelWithAPanelThatGoesIsBalanced() {
    share(b, a, SharedLine.LEVEL);
    delete(a);
    assertInstanceOf(BalancedOrigin.class, b.getOrigin());
    assertTrue(open.setOut(b).isPresent());
  }

  @Test
  void aMirroredArchKeepsItsCurve() {
    Panel mirrored = repeat(b, true);
    double area = Outlines.contour(mirrored.getOutline()).orElseThrow().area();
    Frame frame = Placement.frame(mirrored).orElseThrow();
    open.execute(ModelCommand.of("own", mural, () -> OwnLayout.give(mural, mirrored)));
    assertEquals(area, Outlines.contour(mirrored.getOutline()).orElseThrow().area(), 1e-3);
    assertEquals(frame.x(), Placement.frame(mirrored).orElseThrow().x(), 1e-5);
  }

  @Test
  void aNewPanelBesideARepeatTakesTheTileOfTheOriginal() {
    Frame place = Placement.frame(repeat(a, false)).orElseThrow();
    AddPanelCommand add = new AddPanelCommand(mural, place.moved(place.width(), 0));
    open.execute(add);
    assertSame(a.getTileKind(), add.panel().getTileKind());
    assertEquals(a.getJoint(), add.panel().getJoint());
  }

  /** A panel of 12 by 8 tiles is quick, and one that has its grid in common with a wall of 2500 is not. */
  @Test
  void aPanelIsOnlyQuickIfWhatItTakesFromOthersIsToo() throws Exception {
    assertTrue(PanelTask.quick(MuralReader.panel(a)));
    open.execute(new AddPanelCommand(mural, new Frame(10_000, 0, 50 * 155.575, 50 * 155.575)));
    Panel large = mural.getPanels().get(4);
    share(a, large, SharedLine.GRID);
    assertFalse(PanelTask.quick(MuralReader.panel(a)));
    share(a, large, SharedLine.LEVEL);
    assertFalse(PanelTask.quick(MuralReader.panel(a)));
  }

  @Test
  void theOriginalIsTheHeadOfTheRow() {
    Panel twice = repeat(repeat(a, false), true);
    assertSame(a, RepeatedPanel.original(twice));
    assertSame(b, RepeatedPanel.original(b));
  }
}
