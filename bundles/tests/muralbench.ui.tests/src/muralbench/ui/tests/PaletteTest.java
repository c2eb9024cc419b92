// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.nio.file.Path;
import java.util.List;
import muralbench.model.CircleOutline;
import muralbench.model.Panel;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.palette.PaletteContainer;
import org.eclipse.gef.palette.ToolEntry;
import org.eclipse.gef.ui.palette.PaletteViewer;
import org.eclipse.swt.graphics.Point;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the palette makes lands where the person points, is selected and can be undone. */
class PaletteTest extends DesktopTest {
  private Wall wall;

  @BeforeEach
  void open(@TempDir Path folder) throws Exception {
    wall = Wall.open(SampleWall.create(), folder.resolve("wall.mural"));
  }

  private void choose(String label) {
    PaletteViewer palette = wall.viewer().getEditDomain().getPaletteViewer();
    palette.setActiveTool(find(palette.getPaletteRoot(), label));
    settle();
  }

  private static ToolEntry find(PaletteContainer container, String label) {
    for (Object entry : container.getChildren()) {
      if (entry instanceof ToolEntry tool && tool.getLabel().equals(label)) {
        return tool;
      }
      ToolEntry below = entry instanceof PaletteContainer inner ? find(inner, label) : null;
      if (below != null) {
        return below;
      }
    }
    return null;
  }

  private Point rightOfAll() {
    Rectangle last = wall.place(wall.panel(1));
    return new Point(last.right() + 20, last.y + 20);
  }

  @Test
  void aPanelIsDraggedToSizeAndTakesTheTileOfItsNeighbour() {
    choose("Panel");
    Point from = rightOfAll();
    wall.drag(from, new Point(from.x + 30, from.y + 60));
    Panel made = wall.panel(2);
    assertEquals("C", made.getId());
    assertSame(wall.panel(1).getTileKind(), made.getTileKind());
    assertSame(wall.part(made), wall.viewer().getSelectedEditParts().get(0));
    // An edge is drawn to a line up to 6 pixels away.
    assertEquals(wall.place(made).width, 30, 12);
    wall.mural().commandStack().undo();
    assertEquals(2, wall.mural().mural().getPanels().size());
  }

  @Test
  void aClickPutsARoundOpeningIntoAPanel() {
    choose("Round opening");
    wall.click(wall.middle(wall.panel(1)));
    CircleOutline round = (CircleOutline) wall.opening(1).getOutline();
    assertEquals(76.2, round.getRadius());
    assertEquals(3048, round.getCentreX(), 0.001);
  }

  @Test
  void anOpeningIsNotPutOntoTheBareWall() {
    choose("Outlet");
    wall.click(rightOfAll());
    assertEquals(List.of(1, 0), wall.mural().mural().getPanels().stream().map(panel -> panel.getOpenings().size())
        .toList());
  }

  @Test
  void aClickNearTheEdgePutsTheWholeOpeningIntoThePanel() {
    choose("Round opening");
    Rectangle panel = wall.place(wall.panel(0));
    wall.click(new Point(panel.x + 2, panel.y + panel.height / 2));
    CircleOutline round = (CircleOutline) wall.panel(0).getOpenings().get(1).getOutline();
    assertEquals(76.2, round.getRadius());
    assertEquals(Wall.rectangle(wall.panel(0)).getX(), round.getCentreX() - round.getRadius(), 1e-3);
  }
}
