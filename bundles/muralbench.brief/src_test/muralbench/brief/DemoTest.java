// SPDX-License-Identifier: EPL-2.0
package muralbench.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import muralbench.model.CircleOutline;
import muralbench.model.MeasuredOutline;
import muralbench.model.Mural;
import muralbench.model.Panel;
import muralbench.model.PathOutline;
import muralbench.model.RectangleOutline;
import muralbench.model.file.MuralFile;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoTest {
  private final Mural demo = BriefReader.demo();

  @Test
  void fourPanelsOfADayAndACompassFace() {
    assertEquals(List.of("Low water", "The crossing", "Storm light", "Lamps home", "Compass face"),
        demo.getPanels().stream().map(Panel::getTitle).toList());
    assertEquals(List.of("A", "B", "C", "D", "E"), demo.getPanels().stream().map(Panel::getId).toList());
  }

  @Test
  void widthsDifferAndPanelsDoNotTouch() {
    List<RectangleOutline> rectangles = demo.getPanels().stream().map(Panel::getOutline)
        .filter(RectangleOutline.class::isInstance).map(RectangleOutline.class::cast).toList();
    assertEquals(List.of(1828.8, 1552.575), rectangles.stream().map(RectangleOutline::getWidth).toList());
    for (int i = 1; i < rectangles.size(); i++) {
      RectangleOutline before = rectangles.get(i - 1);
      assertTrue(before.getX() + before.getWidth() < rectangles.get(i).getX());
    }
  }

  @Test
  void gridRunningBondAndRings() {
    assertEquals(List.of("grid", "grid", "running", "grid", "rings"),
        demo.getPanels().stream().map(panel -> panel.getBond().getKind()).toList());
  }

  @Test
  void theSecondWallWasMeasuredOnSite() {
    MeasuredOutline wall = (MeasuredOutline) demo.getPanels().get(1).getOutline();
    assertEquals(2438.4, wall.getBottom());
    assertEquals(110.375 * 25.4, wall.getRising(), 1e-9);
    assertEquals(25.4 / 16, wall.getAccuracy(), 1e-9);
  }

  @Test
  void outletWindowArchAndFace() {
    assertEquals("outlet", demo.getPanels().get(0).getOpenings().get(0).getKind());
    assertEquals("window", demo.getPanels().get(1).getOpenings().get(0).getKind());
    assertEquals("M 6121.4 914.4 L 7340.6 914.4 L 7340.6 1828.8 A 609.6 609.6 0 0 1 6121.4 1828.8 Z",
        ((PathOutline) demo.getPanels().get(3).getOutline()).getData());
    assertEquals(609.6, ((CircleOutline) demo.getPanels().get(4).getOutline()).getRadius());
  }

  /** ANSI A108.02, 4.3.8: at least three times the spread of facial size, and 1/16 in. */
  @Test
  void jointsAreWideEnoughForTheTile() {
    for (Panel panel : demo.getPanels()) {
      assertTrue(panel.getJoint() >= 3 * panel.getTileKind().getFacialVariation(), panel.getId());
      assertTrue(panel.getJoint() >= 25.4 / 16, panel.getId());
    }
  }

  @Test
  void canBeSaved(@TempDir Path folder) throws Exception {
    MuralFile.write(demo, folder.resolve("demo.mural"));
    assertTrue(EcoreUtil.equals(demo, MuralFile.read(folder.resolve("demo.mural"))));
  }
}
