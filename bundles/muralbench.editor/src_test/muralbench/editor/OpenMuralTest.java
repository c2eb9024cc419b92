// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import muralbench.model.DisplayUnits;
import muralbench.model.MovementJoint;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.model.RectangleOutline;
import muralbench.model.file.MuralFile;
import muralbench.setout.PanelSetOut;
import muralbench.setout.SetOutChecks;
import muralbench.setout.bond.BondRegistry;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenMuralTest {
  private final OpenMural mural = SampleMural.open();
  private final Panel first = mural.mural().getPanels().get(0);

  private void joint(Panel panel, double joint) {
    mural.execute(ModelCommand.of("Set joint", mural.mural(), () -> panel.setJoint(joint)));
  }

  @Test
  void everyPanelIsSetOutWhenItIsOpened() {
    assertFalse(mural.busy());
    assertEquals(4, mural.setOut().panels().size());
    // 72 by 48 in, 6 in tile, 1/8 in joint, no cut under half a tile (common practice): 10 whole tiles and two cuts of
    // 5-5/16 in across, 6 whole tiles and two cuts of 5-9/16 in up.
    assertEquals(12 * 8, mural.setOut(first).orElseThrow().pieces().size());
  }

  @Test
  void onlyTheChangedPanelIsSetOutAnew() {
    Panel second = mural.mural().getPanels().get(1);
    PanelSetOut before = mural.setOut(first).orElseThrow();
    PanelSetOut other = mural.setOut(second).orElseThrow();
    joint(first, 6.35);
    assertNotSame(before, mural.setOut(first).orElseThrow());
    assertSame(other, mural.setOut(second).orElseThrow());
  }

  @Test
  void aPanelThatCannotBeSetOutBecomesAFindingAndLeavesTheOthers() {
    joint(first, 500);
    assertTrue(mural.setOut(first).isEmpty());
    assertTrue(mural.problem(first).isPresent());
    assertEquals("input", mural.findings().get(0).code());
    assertEquals("A", mural.findings().get(0).place());
    assertEquals(3, mural.setOut().panels().size());
  }

  @Test
  void twoPanelsWithOneIdAreAFinding() {
    mural.execute(ModelCommand.of("Set id", mural.mural(), () -> first.setId("B")));
    assertEquals("input", mural.findings().get(0).code());
    assertEquals("B", mural.findings().get(0).place());
  }

  @Test
  void undoBringsTheSetOutBack() {
    int before = mural.setOut().pieces();
    joint(first, 50);
    assertTrue(mural.setOut().pieces() < before);
    mural.commandStack().undo();
    assertEquals(before, mural.setOut().pieces());
  }

  @Test
  void listenersHearOfEachChangeOnce() {
    List<String> heard = new ArrayList<>();
    mural.addListener(new OpenMural.Listener() {
      @Override
      public void modelChanged(OpenMural changed) {
        heard.add("model");
      }

      @Override
      public void setOutChanged(OpenMural changed) {
        heard.add("setOut");
      }
    });
    joint(first, 5);
    assertEquals(List.of("setOut", "model"), heard);
  }

  @Test
  void aLargePanelIsSetOutByTheWorkerAndBroughtBackByTheOwner() {
    Deque<Runnable> work = new ArrayDeque<>();
    Deque<Runnable> back = new ArrayDeque<>();
    Mural large = SampleMural.create();
    Panel panel = large.getPanels().get(0);
    ((RectangleOutline) panel.getOutline()).setWidth(40_000);
    OpenMural open = OpenMural.of(large, null, BondRegistry.standard(), work::add, back::add);
    assertTrue(open.busy());
    work.remove().run();
    assertTrue(open.setOut(panel).isEmpty());
    back.remove().run();
    assertFalse(open.busy());
    assertTrue(open.setOut(panel).isPresent());
  }

  @Test
  void aResultThatComesTooLateIsDropped() {
    Deque<Runnable> work = new ArrayDeque<>();
    Mural large = SampleMural.create();
    Panel panel = large.getPanels().get(0);
    RectangleOutline outline = (RectangleOutline) panel.getOutline();
    outline.setWidth(40_000);
    OpenMural open = OpenMural.of(large, null, BondRegistry.standard(), work::add, Runnable::run);
    open.execute(ModelCommand.of("Resize", large, () -> outline.setWidth(30_000)));
    work.remove().run();
    assertTrue(open.busy());
    work.remove().run();
    assertEquals(30_000, open.setOut(panel).orElseThrow().spec().outline().box().width(), 1e-9);
  }

  @Test
  void aLargeMuralIsCheckedByTheWorkerAndTheOldFindingsStandUntilThen() {
    Deque<Runnable> work = new ArrayDeque<>();
    Mural large = SampleMural.create();
    ((RectangleOutline) large.getPanels().get(0).getOutline()).setWidth(60_000);
    OpenMural open = OpenMural.of(large, null, BondRegistry.standard(), work::add, Runnable::run);
    work.remove().run();
    assertEquals(List.of(), open.findings());
    assertEquals(List.of(), open.findings());
    assertEquals(1, work.size());
    work.remove().run();
    assertFalse(open.findings().isEmpty());
    assertEquals(SetOutChecks.findings(open.setOut()), open.findings());
    assertTrue(work.isEmpty());
  }

  @Test
  void theSaveMarkFollowsUndo(@TempDir Path folder) throws Exception {
    assertTrue(mural.dirty());
    mural.saveAs(folder.resolve("wall.mural"));
    assertFalse(mural.dirty());
    joint(first, 5);
    assertTrue(mural.dirty());
    mural.commandStack().undo();
    assertFalse(mural.dirty());
  }

  @Test
  void whatIsSavedIsReadBack(@TempDir Path folder) throws Exception {
    joint(first, 4.7625);
    mural.saveAs(folder.resolve("wall.mural"));
    assertTrue(EcoreUtil.equals(mural.mural(), MuralFile.read(folder.resolve("wall.mural"))));
  }

  @Test
  void whatCannotBeSetOutIsToldInTheUnitsOfTheMural() {
    MovementJoint joint = MuralFactory.eINSTANCE.createMovementJoint();
    joint.setAt(900);
    joint.setWidth(1.5875);
    mural.execute(ModelCommand.of("", mural.mural(), () -> first.getMovementJoints().add(joint)));
    assertTrue(mural.problem(first).orElseThrow().problem().contains("1/16 in"));
    mural.execute(ModelCommand.of("", mural.mural(), () -> mural.mural().setUnits(DisplayUnits.MILLIMETRES)));
    assertTrue(mural.problem(first).orElseThrow().problem().contains("1.5875 mm"));
  }
}
