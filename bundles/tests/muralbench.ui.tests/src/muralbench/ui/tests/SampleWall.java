// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.model.PathOutline;
import muralbench.model.RectangleOutline;
import muralbench.model.TileKind;

/** A wall in inches: a panel with a window, and an arch. */
final class SampleWall {
  private static final MuralFactory FACTORY = MuralFactory.eINSTANCE;

  private SampleWall() {}

  static Mural create() {
    Mural mural = FACTORY.createMural();
    mural.setTitle("Slack water");
    mural.setSite(FACTORY.createSite());
    TileKind tile = FACTORY.createTileKind();
    tile.setId("T6");
    tile.setWidth(152.4);
    tile.setHeight(152.4);
    mural.getTileKinds().add(tile);
    Panel panel = panel(mural, "A", "Low water");
    panel.setOutline(rectangle(0, 914.4, 1828.8, 1219.2));
    Opening window = FACTORY.createOpening();
    window.setId("A1");
    window.setKind("window");
    window.setOutline(rectangle(609.6, 1219.2, 609.6, 609.6));
    panel.getOpenings().add(window);
    PathOutline arch = FACTORY.createPathOutline();
    arch.setData("M2540 914.4 H3556 V1930.4 A508 508 0 0 1 2540 1930.4 Z");
    panel(mural, "B", "Lamps home").setOutline(arch);
    return mural;
  }

  private static Panel panel(Mural mural, String id, String title) {
    Panel panel = FACTORY.createPanel();
    panel.setId(id);
    panel.setTitle(title);
    panel.setTileKind(mural.getTileKinds().get(0));
    panel.setJoint(3.175);
    panel.setBond(FACTORY.createBond());
    panel.setOrigin(FACTORY.createBalancedOrigin());
    mural.getPanels().add(panel);
    return panel;
  }

  static RectangleOutline rectangle(double x, double y, double width, double height) {
    RectangleOutline outline = FACTORY.createRectangleOutline();
    outline.setX(x);
    outline.setY(y);
    outline.setWidth(width);
    outline.setHeight(height);
    return outline;
  }
}
