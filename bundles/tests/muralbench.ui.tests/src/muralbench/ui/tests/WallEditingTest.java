// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import muralbench.editor.ModelCommand;
import muralbench.model.Mural;
import muralbench.model.file.MuralFile;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.EditPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.actions.ActionFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Gestures on the wall change the model, and undo takes them back. */
class WallEditingTest extends DesktopTest {
  private Path file;
  private Wall wall;
  private Mural before;

  @BeforeEach
  void open(@TempDir Path folder) throws Exception {
    file = folder.resolve("wall.mural");
    wall = Wall.open(SampleWall.create(), file);
    before = EcoreUtil.copy(wall.mural().mural());
  }

  private static Point beside(Point at, int dx, int dy) {
    return new Point(at.x + dx, at.y + dy);
  }

  private Point insidePanel() {
    return beside(wall.middle(wall.panel(0)), -wall.place(wall.panel(0)).width / 2 + 20, 0);
  }

  private void undo() {
    wall.editor().getEditorSite().getActionBars().getGlobalActionHandler(ActionFactory.UNDO.getId()).run();
    settle();
    assertTrue(EcoreUtil.equals(before, wall.mural().mural()));
  }

  @Test
  void draggingAPanelMovesItWithItsWindowAndUndoBringsBothBack() {
    wall.drag(insidePanel(), beside(insidePanel(), 37, -29));
    assertTrue(Wall.rectangle(wall.panel(0)).getX() > 0);
    assertTrue(Wall.rectangle(wall.panel(0)).getY() > 914.4);
    assertEquals(1828.8, Wall.rectangle(wall.panel(0)).getWidth());
    assertEquals("Move panel A", wall.mural().commandStack().getUndoCommand().getLabel());
    assertTrue(wall.editor().isDirty());
    undo();
    assertFalse(wall.editor().isDirty());
  }

  @Test
  void whileAWindowIsDraggedThePanelIsSetOutAnewButNotChanged() {
    Point from = wall.middle(wall.opening(0));
    Point tile = new Point(wall.place(wall.opening(0)).right() + 12, from.y + 12);
    RGB bare = new RGB(0xFF, 0xFF, 0xFF);
    assertNotEquals(bare, wall.colour(tile));
    wall.press(from, beside(from, 40, 0));
    assertEquals(bare, wall.colour(tile));
    assertTrue(EcoreUtil.equals(before, wall.mural().mural()));
    wall.mouse(SWT.MouseUp, beside(from, 40, 0), SWT.BUTTON1);
    assertFalse(EcoreUtil.equals(before, wall.mural().mural()));
    undo();
  }

  @Test
  void withTheAlternateKeyHeldNothingSnaps() {
    wall.mouse(SWT.MouseMove, insidePanel(), 0);
    wall.mouse(SWT.MouseDown, insidePanel(), 0);
    Point start = insidePanel();
    for (int step = 1; step <= 7; step++) {
      wall.mouse(SWT.MouseMove, beside(start, step, 0), SWT.BUTTON1 | SWT.ALT);
    }
    wall.mouse(SWT.MouseUp, beside(start, 7, 0), SWT.BUTTON1 | SWT.ALT);
    assertEquals(7 / (10 * wall.zoom().getZoom()), Wall.rectangle(wall.panel(0)).getX(), 1e-6);
  }

  @Test
  void theRightEdgeIsDraggedByItsHandle() {
    wall.click(insidePanel());
    int pieces = wall.mural().setOut(wall.panel(0)).orElseThrow().pieces().size();
    Point edge = new Point(wall.place(wall.panel(0)).right(), wall.middle(wall.panel(0)).y);
    wall.drag(edge, beside(edge, 45, 0));
    assertEquals(0, Wall.rectangle(wall.panel(0)).getX());
    assertTrue(Wall.rectangle(wall.panel(0)).getWidth() > 1828.8);
    assertTrue(wall.mural().setOut(wall.panel(0)).orElseThrow().pieces().size() > pieces);
    assertEquals("Resize panel A", wall.mural().commandStack().getUndoCommand().getLabel());
    undo();
  }

  @Test
  void arrowKeysNudgeByAQuarterAndASixteenthOfAnInch() {
    wall.click(insidePanel());
    wall.key(SWT.ARROW_RIGHT, '\0', 0);
    assertEquals(6.35, Wall.rectangle(wall.panel(0)).getX());
    wall.key(SWT.ARROW_LEFT, '\0', SWT.SHIFT);
    assertEquals(4.7625, Wall.rectangle(wall.panel(0)).getX());
  }

  @Test
  void theDeleteKeyTakesAwayWhatIsSelected() {
    wall.click(wall.middle(wall.opening(0)));
    wall.key(SWT.DEL, SWT.DEL, 0);
    assertTrue(wall.panel(0).getOpenings().isEmpty());
    undo();
  }

  @Test
  void theWheelZoomsAtThePointer() {
    Point at = wall.middle(wall.opening(0));
    double zoom = wall.zoom().getZoom();
    wall.wheel(at, 4);
    assertEquals(zoom * Math.pow(1.2, 4), wall.zoom().getZoom(), 1e-9);
    assertEquals(at.x, wall.middle(wall.opening(0)).x, 3);
    assertEquals(at.y, wall.middle(wall.opening(0)).y, 3);
    wall.zoom().setZoomAsText(org.eclipse.gef.editparts.ZoomManager.FIT_ALL);
    assertEquals(zoom, wall.zoom().getZoom(), 1e-9);
  }

  @Test
  void aFindingIsRevealed() {
    assertTrue(wall.editor().reveal("A1"));
    assertSame(wall.part(wall.opening(0)), wall.viewer().getSelectedEditParts().get(0));
    assertTrue(wall.editor().reveal("B-02-03"));
    assertSame(wall.part(wall.panel(1)), wall.viewer().getSelectedEditParts().get(0));
    assertFalse(wall.editor().reveal("nowhere"));
  }

  @Test
  void savingKeepsTheChangeInTheFile() throws Exception {
    wall.drag(insidePanel(), beside(insidePanel(), 60, 0));
    wall.editor().doSave(new NullProgressMonitor());
    assertFalse(wall.editor().isDirty());
    assertTrue(EcoreUtil.equals(wall.mural().mural(), MuralFile.read(file)));
  }

  @Test
  void aFileThatCannotBeWrittenStopsTheClosing() throws Exception {
    wall.drag(insidePanel(), beside(insidePanel(), 60, 0));
    Files.delete(file);
    Files.createDirectories(file.resolve("in the way"));
    NullProgressMonitor monitor = new NullProgressMonitor();
    display().timerExec(300, this::closeDialog);
    wall.editor().doSave(monitor);
    assertTrue(monitor.isCanceled());
    assertTrue(wall.editor().isDirty());
  }

  private void closeDialog() {
    Shell dialog = display().getActiveShell();
    if (dialog != null && dialog != page().getWorkbenchWindow().getShell()) {
      dialog.close();
    } else {
      Arrays.stream(display().getShells()).filter(shell -> shell.getParent() != null && shell.isVisible())
          .forEach(Shell::close);
    }
  }

  @Test
  void partsHaveNamesForAScreenReader() {
    EditPart part = wall.part(wall.opening(0));
    org.eclipse.swt.accessibility.AccessibleEvent event = new org.eclipse.swt.accessibility.AccessibleEvent(this);
    ((org.eclipse.gef.AccessibleEditPart) part.getAdapter(org.eclipse.gef.AccessibleEditPart.class)).getName(event);
    assertEquals("opening A1", event.result);
  }

  @Test
  void closingAChangedMuralAsksAndCancelKeepsItOpen() {
    wall.mural().execute(ModelCommand.of("Title", wall.mural().mural(), () -> wall.mural().mural().setTitle("Ebb")));
    String asked = Gestures.dialogText("Save Mural", () -> page().closeEditor(wall.editor(), true));
    assertTrue(asked.contains("Save the changes to wall.mural?"), asked);
    assertSame(wall.editor(), page().getActiveEditor());
  }
}
