// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import muralbench.editor.ModelCommand;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.model.RectangleOutline;
import muralbench.model.RepeatedOutline;
import muralbench.model.SharedOrigin;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A panel that repeats another one, as a person makes and moves it. */
class RepeatPanelTest extends DesktopTest {
  @TempDir
  private Path folder;
  private Wall wall;
  private Panel original;
  private Panel repeat;

  @BeforeEach
  void repeatTheFirstPanel() throws Exception {
    wall = Wall.open(SampleWall.create(), folder.resolve("wall.mural"));
    original = wall.panel(0);
    wall.editor().reveal(original.getId());
    Gestures.run("muralbench.app.repeatMirrored");
    repeat = wall.panel(wall.mural().mural().getPanels().size() - 1);
    await("the repeat", () -> wall.part(repeat) != null && wall.mural().setOut(repeat).isPresent());
    Gestures.run("muralbench.app.zoomFit");
    settle();
  }

  @Test
  void thePanelMenuOffersBoth() {
    List<String> bar = Gestures.menuTexts("Panel").stream().map(text -> text.replace("&", "")).toList();
    assertTrue(bar.stream().anyMatch(text -> text.startsWith("Repeat Panel Mirrored")), bar.toString());
    assertTrue(bar.stream().anyMatch(text -> text.equals("Repeat Panel")), bar.toString());
  }

  @Test
  void theRepeatStandsOnTheWallWithItsTiles() {
    RepeatedOutline outline = assertInstanceOf(RepeatedOutline.class, repeat.getOutline());
    assertTrue(outline.isMirrored());
    RGB tile = tint(original, 0.2);
    assertEquals(tile, tint(repeat, 0.8));
    assertNotEquals(tile, tint(repeat, 0.5));
    assertEquals(tint(original, 0.5), tint(repeat, 0.5));
  }

  /** The colour that is seen most around a place at half the height of a panel; in the middle there is a window. */
  private RGB tint(Panel panel, double across) {
    Point middle = at(panel, across, 0.5);
    Map<RGB, Integer> seen = new HashMap<>();
    for (int x = -6; x <= 6; x += 2) {
      for (int y = -6; y <= 6; y += 2) {
        seen.merge(wall.colour(new Point(middle.x + x, middle.y + y)), 1, Integer::sum);
      }
    }
    return seen.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
  }

  private Point at(Panel panel, double across, double down) {
    Rectangle place = wall.place(panel);
    return new Point(place.x + (int) (place.width * across), place.y + (int) (place.height * down));
  }

  @Test
  void openingsOfTheRepeatAreFoundByTheirNames() {
    assertTrue(wall.editor().reveal(repeat.getId() + "-A1"));
    assertEquals(List.of(wall.part(repeat)), wall.viewer().getSelectedEditParts());
  }

  @Test
  void theRepeatIsDraggedAndTheOriginalStays() {
    double before = ((RepeatedOutline) repeat.getOutline()).getX();
    Point from = at(repeat, 0.2, 0.3);
    wall.click(from);
    wall.drag(from, new Point(from.x + 40, from.y));
    RepeatedOutline moved = assertInstanceOf(RepeatedOutline.class, repeat.getOutline());
    assertTrue(moved.getX() > before, moved.getX() + " after " + before);
    assertEquals(0, Wall.rectangle(original).getX());
  }

  @Test
  void fitsOfPanelsWithOneGridAreNotComparedOneByOne() {
    SharedOrigin origin = MuralFactory.eINSTANCE.createSharedOrigin();
    origin.setPanel(original);
    wall.mural().execute(ModelCommand.of("share", wall.mural().mural(), () -> wall.panel(1).setOrigin(origin)));
    wall.editor().reveal("B");
    String told = Gestures.dialogText("Compare Fits", () -> Gestures.run("muralbench.app.fit"));
    assertTrue(told.contains("Panels A, B share one grid"), told);
  }

  @Test
  void whenTheOriginalIsDeletedTheRepeatHasItsLayout() {
    int pieces = wall.mural().setOut(repeat).orElseThrow().pieces().size();
    wall.click(at(original, 0.2, 0.3));
    Gestures.run("org.eclipse.ui.edit.delete");
    assertInstanceOf(RectangleOutline.class, repeat.getOutline());
    await("the repeat", () -> wall.mural().setOut(repeat).isPresent());
    assertEquals(pieces, wall.mural().setOut(repeat).orElseThrow().pieces().size());
    Gestures.run("org.eclipse.ui.edit.undo");
    assertInstanceOf(RepeatedOutline.class, repeat.getOutline());
  }
}
