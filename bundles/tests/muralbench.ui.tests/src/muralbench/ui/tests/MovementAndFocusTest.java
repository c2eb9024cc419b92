// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import muralbench.app.internal.panel.MovementChoice;
import muralbench.app.internal.panel.MovementDialog;
import muralbench.app.internal.panel.PanelChange;
import muralbench.editor.PanelPreview;
import muralbench.editor.internal.field.Tint;
import muralbench.model.BalancedOrigin;
import muralbench.model.Exposure;
import muralbench.model.Mural;
import muralbench.setout.movement.MovementJoint;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Outside movement joints are 12 ft apart at most and 1/2 in wide at that: TCNA Handbook EJ171, as published. */
class MovementAndFocusTest extends DesktopTest {
  @TempDir
  private Path folder;
  private Wall wall;
  private MovementDialog dialog;

  @BeforeEach
  void openTheWall() throws Exception {
    Mural mural = SampleWall.create();
    mural.getSite().setExposure(Exposure.EXTERIOR);
    mural.getPanels().get(0).getOpenings().clear();
    mural.getPanels().get(0).setOutline(SampleWall.rectangle(0, 914.4, 6000, 1219.2));
    mural.getPanels().remove(1);
    wall = Wall.open(mural, folder.resolve("wall.mural"));
  }

  @AfterEach
  void closeTheDialog() {
    if (dialog != null) {
      dialog.close();
    }
  }

  @Test
  void withoutJointsTheDistanceIsToldAsTooLong() throws Exception {
    open();
    assertTrue(dialog.getMessage().contains("the rule allows 12 ft 0 in"), dialog.getMessage());
  }

  @Test
  void theRuleIsAppliedSeenOnTheWallAndUndoneInOneStep() throws Exception {
    open();
    press("By the rule");
    await("the set-out", () -> dialog.made().isPresent());
    assertEquals(12.7, dialog.made().orElseThrow().movement().get(0).width(), 1e-9);
    wall.mural().execute(PanelChange.movement(wall.mural().mural(), wall.panel(0), dialog.choice()));
    await("the wall", () -> !wall.mural().busy());
    MovementJoint joint = wall.mural().setOut(wall.panel(0)).orElseThrow().movement().get(0);
    assertEquals(List.of(Tint.EDGE, Tint.WHOLE, Tint.EDGE), coloursAcross(joint.at()));
    wall.mural().commandStack().undo();
    assertFalse(wall.panel(0).isMovementByRule());
  }

  @Test
  void jointsOfTheRuleAreTakenOverByHandAndChanged() throws Exception {
    open();
    press("By the rule");
    press("Placed by hand");
    await("the joints of the rule", () -> dialog.choice().joints().size() == 1 && dialog.made().isPresent());
    press("Add Joint");
    assertEquals(2, Gestures.find(dialog.getShell(), Table.class, any -> true).getItemCount());
    Gestures.find(dialog.getShell(), Text.class, text -> text.getText().equals("1/2 in")).setText("1/32 in");
    await("the refusal", () -> dialog.getErrorMessage() != null);
    assertTrue(dialog.getErrorMessage().contains("narrower than the other joints"), dialog.getErrorMessage());
    assertEquals(MovementChoice.Kind.HAND, dialog.choice().kind());
  }

  @Test
  void aClickOnAJointInThePictureSelectsIt() throws Exception {
    open();
    press("By the rule");
    await("the set-out", () -> dialog.made().isPresent());
    Table table = Gestures.find(dialog.getShell(), Table.class, any -> true);
    PanelPreview picture = Gestures.find(dialog.getShell(), PanelPreview.class, any -> true);
    table.deselectAll();
    Event click = new Event();
    click.y = picture.getClientArea().height / 2;
    click.x = columnOf(picture, dialog.made().orElseThrow().movement().get(0).at());
    picture.notifyListeners(SWT.MouseDown, click);
    assertEquals(0, table.getSelectionIndex());
  }

  private static int columnOf(PanelPreview picture, double x) {
    int column = 0;
    while (picture.wall(column, 0).orElseThrow().x() < x) {
      column++;
    }
    return column;
  }

  @Test
  void thePlaceUnderThePointerBecomesTheFocalPointAndIsMarked() {
    Point at = wall.middle(wall.panel(0));
    menu(at, "Use as Focal Point").notifyListeners(SWT.Selection, new Event());
    BalancedOrigin origin = (BalancedOrigin) wall.panel(0).getOrigin();
    assertEquals(3000, origin.getFocalX(), 20);
    assertEquals(1524, origin.getFocalY(), 20);
    assertEquals(colour(Tint.GUIDE), wall.colour(wall.middle(wall.panel(0))));
    menu(at, "Clear Focal Point").notifyListeners(SWT.Selection, new Event());
    assertFalse(origin.isSetFocalX());
  }

  private void open() throws Exception {
    dialog = new MovementDialog(page().getWorkbenchWindow().getShell(), wall.mural(), wall.panel(0));
    dialog.setBlockOnOpen(false);
    dialog.open();
    await("the set-out", () -> dialog.made().isPresent());
  }

  private void press(String words) {
    Button button = Gestures.find(dialog.getShell(), Button.class,
        one -> one.getText().replace("&", "").equals(words));
    if ((button.getStyle() & SWT.RADIO) != 0) {
      Arrays.stream(button.getParent().getChildren()).filter(Button.class::isInstance)
          .forEach(other -> ((Button) other).setSelection(other == button));
    }
    button.notifyListeners(SWT.Selection, new Event());
  }

  /** Asks for the menu of the wall at a point of the canvas. */
  private MenuItem menu(Point at, String words) {
    Event event = new Event();
    Point onScreen = wall.canvas().toDisplay(at);
    event.x = onScreen.x;
    event.y = onScreen.y;
    event.detail = SWT.MENU_MOUSE;
    wall.canvas().notifyListeners(SWT.MenuDetect, event);
    wall.viewer().getContextMenu().createContextMenu(wall.canvas()).notifyListeners(SWT.Show, new Event());
    return Arrays.stream(wall.viewer().getContextMenu().getMenu().getItems())
        .filter(item -> item.getText().replace("&", "").equals(words)).findFirst().orElseThrow();
  }

  /** The tints that follow one another across a place on the wall, without what lies outside the bar. */
  private List<Tint> coloursAcross(double x) {
    int middle = (int) Math.round(x * wall.zoom().getZoom() * 10) - wall.canvas().getViewport().getViewLocation().x;
    int row = wall.middle(wall.panel(0)).y + 3;
    List<Tint> seen = new ArrayList<>();
    for (int column = middle - 4; column <= middle + 4; column++) {
      RGB here = wall.colour(new Point(column, row));
      Tint tint = here.equals(colour(Tint.EDGE)) ? Tint.EDGE : here.equals(colour(Tint.WHOLE)) ? Tint.WHOLE : null;
      boolean inBar = tint == Tint.EDGE || tint != null && !seen.isEmpty();
      if (inBar && (seen.isEmpty() || seen.get(seen.size() - 1) != tint)) {
        seen.add(tint);
      }
    }
    return seen.subList(0, Math.min(3, seen.size()));
  }

  private static RGB colour(Tint tint) {
    return new RGB(tint.rgb() >> 16 & 0xFF, tint.rgb() >> 8 & 0xFF, tint.rgb() & 0xFF);
  }
}
