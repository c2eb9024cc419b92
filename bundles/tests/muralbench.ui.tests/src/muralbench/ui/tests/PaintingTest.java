// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import muralbench.brief.BriefReader;
import muralbench.editor.internal.field.Tint;
import muralbench.model.Mural;
import muralbench.setout.Piece;
import muralbench.setout.PieceKind;
import muralbench.setout.geometry.Vec;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is seen on the wall is what the set-out says. */
class PaintingTest extends DesktopTest {
  @TempDir
  private Path folder;

  private static RGB rgb(Tint tint) {
    return new RGB(tint.rgb() >> 16 & 0xFF, tint.rgb() >> 8 & 0xFF, tint.rgb() & 0xFF);
  }

  /** The point of the canvas that shows a place on the wall. */
  private static Point pixel(Wall wall, Vec place) {
    org.eclipse.draw2d.geometry.Point view = wall.canvas().getViewport().getViewLocation();
    double scale = wall.zoom().getZoom() * 10;
    return new Point((int) Math.round(place.x() * scale) - view.x, (int) Math.round(-place.y() * scale) - view.y);
  }

  @Test
  void eachKindOfPieceHasItsColour() throws Exception {
    Wall wall = Wall.open(SampleWall.create(), folder.resolve("wall.mural"));
    for (PieceKind kind : new PieceKind[] {PieceKind.WHOLE, PieceKind.TRIMMED}) {
      Piece piece = wall.mural().setOut(wall.panel(0)).orElseThrow().pieces().stream()
          .filter(one -> one.kind() == kind).findFirst().orElseThrow();
      Vec nearCorner = new Vec(piece.box().minX() + 25, piece.box().minY() + 25);
      assertEquals(rgb(Tint.of(kind)), wall.colour(pixel(wall, nearCorner)), kind.word());
    }
  }

  @Test
  void wallFloorAndOpeningAreBare() throws Exception {
    Wall wall = Wall.open(SampleWall.create(), folder.resolve("wall.mural"));
    assertEquals(rgb(Tint.WALL), wall.colour(pixel(wall, new Vec(2200, 1500))));
    assertEquals(rgb(Tint.FLOOR), wall.colour(pixel(wall, new Vec(2200, -60))));
    assertEquals(rgb(Tint.OPENING), wall.colour(pixel(wall, new Vec(660, 1270))));
  }

  @Test
  void theDemonstrationIsPaintedAtEveryZoom() throws Exception {
    Wall wall = Wall.open(BriefReader.demo(), folder.resolve("demo.mural"));
    assertEquals(wall.mural().mural().getPanels().size(), wall.mural().setOut().panels().size());
    for (double zoom : wall.zoom().getZoomLevels()) {
      wall.zoom().setZoom(zoom);
      settle();
      assertTrue(wall.paint() > 0);
    }
    assertEquals(wall.zoom().getMaxZoom(), wall.zoom().getZoom());
  }

  @Test
  void tenThousandTilesArePaintedWithinASecondEvenOnABusyMachine() throws Exception {
    Mural mural = SampleWall.create();
    mural.getPanels().get(0).setOutline(SampleWall.rectangle(0, 0, 15_600, 15_600));
    mural.getPanels().get(0).getOpenings().clear();
    mural.getPanels().remove(1);
    Wall wall = Wall.open(mural, folder.resolve("large.mural"));
    assertTrue(wall.mural().setOut().pieces() > 9_900);
    wall.paint();
    double best = Math.min(wall.paint(), Math.min(wall.paint(), wall.paint()));
    assertTrue(best < 1000, "one painting took " + best + " ms");
  }
}
