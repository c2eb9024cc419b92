// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import muralbench.app.internal.findings.FindingsView;
import muralbench.model.Opening;
import org.eclipse.gef.EditPart;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.jface.bindings.keys.KeySequence;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.keys.IBindingService;
import org.eclipse.ui.part.PageBookView;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Outline and Properties views follow the wall, and the wall follows them. */
class ViewsTest extends DesktopTest {
  private Wall wall;

  @BeforeEach
  void open(@TempDir Path folder) throws Exception {
    wall = Wall.open(SampleWall.create(), folder.resolve("wall.mural"));
  }

  private static Tree tree(String view) throws Exception {
    IViewPart part = page().showView(view);
    settle();
    Tree tree = find(((PageBookView) part).getCurrentPage().getControl());
    assertTrue(tree != null, "a tree in " + view);
    return tree;
  }

  private static Tree find(Control control) {
    if (control instanceof Tree tree) {
      return tree;
    }
    return control instanceof Composite composite ? Arrays.stream(composite.getChildren()).map(ViewsTest::find)
        .filter(found -> found != null).findFirst().orElse(null) : null;
  }

  private static TreeItem line(TreeItem[] items, String text) {
    for (TreeItem item : items) {
      if (item.getText(0).startsWith(text)) {
        return item;
      }
      TreeItem below = line(item.getItems(), text);
      if (below != null) {
        return below;
      }
    }
    return null;
  }

  private static void select(Tree tree, TreeItem item) {
    tree.setSelection(item);
    Event event = new Event();
    event.item = item;
    tree.notifyListeners(SWT.Selection, event);
    settle();
  }

  /** Opens the editor of a line, types and presses the enter key. */
  private static void type(Tree tree, String line, String text) {
    TreeItem item = line(tree.getItems(), line);
    Rectangle cell = item.getBounds(1);
    Event press = new Event();
    press.button = 1;
    press.x = cell.x + 4;
    press.y = cell.y + cell.height / 2;
    tree.notifyListeners(SWT.MouseDown, press);
    settle();
    Text field = Arrays.stream(tree.getChildren()).filter(Text.class::isInstance).map(Text.class::cast)
        .findFirst().orElseThrow();
    field.setText(text);
    field.notifyListeners(SWT.DefaultSelection, new Event());
    settle();
  }

  @Test
  void theOutlineShowsPanelsOpeningsAndTiles() throws Exception {
    Tree tree = tree(IPageLayout.ID_OUTLINE);
    assertEquals("Slack water", tree.getItem(0).getText());
    assertEquals("A  Low water", tree.getItem(0).getItem(0).getText());
    assertEquals("A1  window", tree.getItem(0).getItem(0).getItem(0).getText());
    assertEquals("T6  tile 6 in × 6 in", tree.getItem(0).getItem(2).getText());
  }

  @Test
  void whatIsSelectedInTheOutlineIsSelectedOnTheWall() throws Exception {
    Tree tree = tree(IPageLayout.ID_OUTLINE);
    select(tree, tree.getItem(0).getItem(1));
    assertSame(wall.part(wall.panel(1)), wall.viewer().getSelectedEditParts().get(0));
    wall.viewer().select(wall.part(wall.opening(0)));
    settle();
    assertEquals("A1  window", tree.getSelection()[0].getText());
  }

  @Test
  void theOutlineFollowsTheModel() throws Exception {
    Tree tree = tree(IPageLayout.ID_OUTLINE);
    wall.viewer().select(wall.part(wall.opening(0)));
    wall.key(SWT.DEL, SWT.DEL, 0);
    assertEquals(0, tree.getItem(0).getItem(0).getItemCount());
    wall.mural().commandStack().undo();
    settle();
    assertEquals(1, tree.getItem(0).getItem(0).getItemCount());
  }

  @Test
  void aLengthTypedIntoThePropertiesSetsThePanelOutAnew() throws Exception {
    page().activate(wall.editor());
    wall.viewer().select(wall.part(wall.panel(0)));
    Tree tree = tree(IPageLayout.ID_PROP_SHEET);
    type(tree, "Joint", "1/4");
    assertEquals(6.35, wall.panel(0).getJoint());
    assertEquals("1/4 in", line(tree.getItems(), "Joint").getText(1));
    assertEquals("Set joint of panel A", wall.mural().commandStack().getUndoCommand().getLabel());
    wall.mural().commandStack().undo();
    settle();
    assertEquals("1/8 in", line(tree.getItems(), "Joint").getText(1));
  }

  @Test
  void badInputIsRefusedInTheProperties() throws Exception {
    page().activate(wall.editor());
    wall.viewer().select(wall.part(wall.panel(0)));
    Tree tree = tree(IPageLayout.ID_PROP_SHEET);
    type(tree, "Joint", "an eighth");
    assertEquals(3.175, wall.panel(0).getJoint());
    assertTrue(!wall.mural().commandStack().canUndo());
  }

  @Test
  void anOpeningHasItsOwnProperties() throws Exception {
    page().activate(wall.editor());
    Opening opening = wall.opening(0);
    EditPart part = wall.part(opening);
    wall.viewer().select(part);
    Tree tree = tree(IPageLayout.ID_PROP_SHEET);
    type(tree, "Above floor", "4 ft 2 in");
    assertEquals(1270, ((muralbench.model.RectangleOutline) opening.getOutline()).getY());
  }

  @Test
  void undoAndRedoWorkWhileThePropertiesHaveTheFocus() throws Exception {
    page().activate(wall.editor());
    wall.viewer().select(wall.part(wall.panel(0)));
    Tree tree = tree(IPageLayout.ID_PROP_SHEET);
    type(tree, "Joint", "1/4");
    Gestures.run(IWorkbenchCommandConstants.EDIT_UNDO);
    assertEquals(3.175, wall.panel(0).getJoint());
    Gestures.run(IWorkbenchCommandConstants.EDIT_REDO);
    assertEquals(6.35, wall.panel(0).getJoint());
  }

  @Test
  void undoWorksWhileAnotherViewHasTheFocus() throws Exception {
    undoFrom(IPageLayout.ID_OUTLINE);
    undoFrom(FindingsView.ID);
  }

  private void undoFrom(String view) throws Exception {
    page().activate(wall.editor());
    wall.viewer().select(wall.part(wall.opening(0)));
    wall.key(SWT.DEL, SWT.DEL, 0);
    page().showView(view);
    settle();
    Gestures.run(IWorkbenchCommandConstants.EDIT_UNDO);
    assertEquals(1, wall.panel(0).getOpenings().size());
  }

  @Test
  void controlYRedoes() throws Exception {
    IBindingService keys = PlatformUI.getWorkbench().getService(IBindingService.class);
    Binding bound = keys.getPerfectMatch(KeySequence.getInstance("M1+Y"));
    assertEquals(IWorkbenchCommandConstants.EDIT_REDO, bound.getParameterizedCommand().getId());
  }
}
