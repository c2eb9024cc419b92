// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import muralbench.model.Mural;
import muralbench.model.RectangleOutline;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PieceKind;
import muralbench.setout.geometry.Box;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A window in a panel of 2,400 tiles, and in one of 600: the pieces follow it while it is dragged. */
class LargePanelTest extends DesktopTest {
  private static final RGB WHOLE_TILE = new RGB(0xFC, 0xFB, 0xF8);
  private static final RGB OPENING = new RGB(0xFF, 0xFF, 0xFF);

  private Wall wall;
  private Mural before;
  private Point from;
  private Point uncovered;

  @TempDir
  Path folder;

  @BeforeEach
  void open() throws Exception {
    open(60, 40);
  }

  private void open(int columns, int courses) throws Exception {
    Mural mural = SampleWall.create();
    mural.getPanels().remove(1);
    RectangleOutline outline = Wall.rectangle(mural.getPanels().get(0));
    outline.setWidth(columns * 155.575);
    outline.setHeight(courses * 155.575);
    RectangleOutline window = (RectangleOutline) mural.getPanels().get(0).getOpenings().get(0).getOutline();
    window.setX(1000);
    window.setY(2000);
    window.setWidth(1000);
    window.setHeight(900);
    wall = Wall.open(mural, folder.resolve(columns + ".mural"));
    before = EcoreUtil.copy(wall.mural().mural());
    from = wall.middle(wall.opening(0));
    uncovered = tileInTheWindow();
    assertEquals(OPENING, wall.colour(uncovered));
  }

  private PanelSetOut setOut() {
    return wall.mural().setOut(wall.panel(0)).orElseThrow();
  }

  /** A place on the canvas where there would be a whole tile if the window were not there. */
  private Point tileInTheWindow() {
    Box tile = setOut().pieces().stream().filter(piece -> piece.kind() == PieceKind.WHOLE).findFirst().orElseThrow()
        .box();
    double x = tile.minX() + 155.575 * Math.ceil((1300 - tile.minX()) / 155.575) + 40;
    double y = tile.minY() + 155.575 * Math.ceil((2300 - tile.minY()) / 155.575) + 40;
    Rectangle place = wall.place(wall.panel(0));
    Box all = setOut().spec().outline().box();
    return new Point((int) (place.x + (x - all.minX()) * place.width / all.width()),
        (int) (place.y + (all.maxY() - y) * place.height / all.height()));
  }

  private Point to() {
    return new Point(from.x + 2 * wall.place(wall.opening(0)).width, from.y);
  }

  private Point belowItsName(Point middle) {
    return new Point(middle.x, middle.y + wall.place(wall.opening(0)).height / 3);
  }

  @Test
  void thePiecesFollowAWindowAndAreAsBeforeWhenTheDragIsGivenUp() {
    Point to = to();
    wall.press(from, to);
    await("the pieces at the new place", () -> wall.colour(uncovered).equals(WHOLE_TILE));
    assertEquals(OPENING, wall.colour(belowItsName(to)));
    assertTrue(EcoreUtil.equals(before, wall.mural().mural()));
    wall.key(SWT.ESC, SWT.ESC, 0);
    assertEquals(OPENING, wall.colour(uncovered));
    assertTrue(EcoreUtil.equals(before, wall.mural().mural()));
    wall.mouse(SWT.MouseUp, to, SWT.BUTTON1);
  }

  @Test
  void inAPanelOfSomeHundredTilesThePiecesFollowToo() throws Exception {
    open(30, 20);
    Point to = to();
    wall.press(from, to);
    await("the pieces at the new place", () -> wall.colour(uncovered).equals(WHOLE_TILE));
    assertEquals(OPENING, wall.colour(belowItsName(to)));
    wall.key(SWT.ESC, SWT.ESC, 0);
    wall.mouse(SWT.MouseUp, to, SWT.BUTTON1);
    assertTrue(EcoreUtil.equals(before, wall.mural().mural()));
  }

  @Test
  void whereItIsLetGoThePanelIsSetOutAnew() {
    PanelSetOut begun = setOut();
    Point to = to();
    wall.press(from, to);
    await("the pieces at the new place", () -> wall.colour(uncovered).equals(WHOLE_TILE));
    wall.mouse(SWT.MouseUp, to, SWT.BUTTON1);
    await("the set-out", () -> !wall.mural().busy());
    assertFalse(begun.pieces().equals(setOut().pieces()));
    assertTrue(setOut().spec().openings().get(0).outline().box().minX() > 2000);
  }
}
