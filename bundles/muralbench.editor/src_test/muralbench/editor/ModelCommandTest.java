// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import muralbench.editor.internal.commands.AddOpeningCommand;
import muralbench.editor.internal.commands.AddPanelCommand;
import muralbench.editor.internal.commands.AddTileCommand;
import muralbench.editor.internal.commands.DeleteCommand;
import muralbench.editor.internal.commands.OutlineKind;
import muralbench.editor.internal.commands.PlaceCommand;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.editor.internal.geometry.Placement;
import muralbench.model.FixedOrigin;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ModelCommandTest {
  private final Mural mural = SampleMural.create();
  private final Panel first = mural.getPanels().get(0);

  private static PlaceCommand place(Mural mural, EObject thing, double dx, double stretch) {
    Frame from = Placement.frame(thing).orElseThrow();
    return new PlaceCommand(mural, List.of(new PlaceCommand.Place(thing, from,
        new Frame(from.x() + dx, from.y(), from.width() * stretch, from.height() * stretch))));
  }

  private ModelCommand kind(OutlineKind kind, Panel panel) {
    return ModelCommand.of("kind", mural, () -> panel.setOutline(kind.from(panel.getOutline()).orElseThrow()));
  }

  /** Each kind of change, and the same change to each kind of outline. */
  private Stream<ModelCommand> commands() {
    Stream<ModelCommand> outlines = mural.getPanels().stream().flatMap(panel -> Stream.of(
        place(mural, panel, 12.7, 1), place(mural, panel, 0, 1.25), kind(OutlineKind.RECTANGLE, panel),
        kind(OutlineKind.POLYGON, panel), kind(OutlineKind.CIRCLE, panel), kind(OutlineKind.PATH, panel)));
    return Stream.concat(outlines, Stream.of(
        place(mural, first.getOpenings().get(0), 25.4, 1), new DeleteCommand(mural, List.of(first)),
        new DeleteCommand(mural, first.getOpenings()), new AddPanelCommand(mural, new Frame(0, 0, 900, 900)),
        new AddTileCommand(mural),
        new AddOpeningCommand(mural, first, "pipe", Outlines.circle(new Frame(900, 1200, 100, 100))),
        ModelCommand.of("tile", mural, () -> mural.getTileKinds().get(0).setWidth(100)),
        ModelCommand.of("origin", mural, () -> first.setOrigin(MuralFactory.eINSTANCE.createFixedOrigin()))));
  }

  @TestFactory
  Stream<DynamicTest> undoGivesTheSameMuralAndRedoTheSameChange() {
    return commands().map(command -> DynamicTest.dynamicTest(command.getLabel(), () -> {
      Mural before = EcoreUtil.copy(mural);
      command.execute();
      Mural after = EcoreUtil.copy(mural);
      assertTrue(!EcoreUtil.equals(before, after) || command.getLabel().equals("kind"));
      command.undo();
      assertTrue(EcoreUtil.equals(before, mural), "undo");
      command.redo();
      assertTrue(EcoreUtil.equals(after, mural), "redo");
      command.undo();
    }));
  }

  @Test
  void aChangeThatFailsIsTakenBack() {
    Mural before = EcoreUtil.copy(mural);
    ModelCommand command = ModelCommand.of("fail", mural, () -> {
      first.setJoint(7);
      throw new IllegalStateException("half-way");
    });
    assertThrows(IllegalStateException.class, command::execute);
    assertTrue(EcoreUtil.equals(before, mural));
  }

  @Test
  void labelsSayWhatWasDone() {
    assertEquals("Move panel A", place(mural, first, 1, 1).getLabel());
    assertEquals("Resize opening A1", place(mural, first.getOpenings().get(0), 0, 2).getLabel());
    assertEquals("Delete panel A", new DeleteCommand(mural, List.of(first)).getLabel());
    assertEquals("Add panel E", new AddPanelCommand(mural, new Frame(0, 0, 1, 1)).getLabel());
  }

  @Test
  void aPanelThatMovesTakesItsOpeningsAndItsGivenStartAlong() {
    FixedOrigin origin = MuralFactory.eINSTANCE.createFixedOrigin();
    first.setOrigin(origin);
    place(mural, first, 25.4, 1).execute();
    assertEquals(533.4, Placement.frame(first.getOpenings().get(0)).orElseThrow().x());
    assertEquals(25.4, origin.getX());
  }

  @Test
  void aPanelThatIsResizedLeavesItsOpeningsOnTheWall() {
    place(mural, first, 0, 2).execute();
    assertEquals(508, Placement.frame(first.getOpenings().get(0)).orElseThrow().x());
  }

  @Test
  void aMoveChangesNoSize() {
    Frame before = Placement.frame(first).orElseThrow();
    place(mural, first, 0.1, 1).execute();
    assertTrue(before.sameSize(Placement.frame(first).orElseThrow()));
  }

  @Test
  void aNewPanelTakesTheTileOfItsNeighbour() {
    AddPanelCommand add = new AddPanelCommand(mural, new Frame(2000, 900, 300, 300));
    add.execute();
    assertEquals(first.getTileKind(), add.panel().getTileKind());
    assertEquals(first.getJoint(), add.panel().getJoint());
  }

  @Test
  void onlyATileThatNoPanelIsMadeOfCanBeDeleted() {
    AddTileCommand add = new AddTileCommand(mural);
    add.execute();
    assertTrue(new DeleteCommand(mural, List.of(add.tile())).canExecute());
    assertFalse(new DeleteCommand(mural, List.of(first.getTileKind())).canExecute());
  }

  @Test
  void theFirstPanelBringsATile() {
    Mural empty = MuralFactory.eINSTANCE.createMural();
    new AddPanelCommand(empty, new Frame(0, 0, 900, 900)).execute();
    assertEquals("T1", empty.getPanels().get(0).getTileKind().getId());
  }
}
