// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Opening;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.PathOutline;
import muralbench.model.TileKind;
import muralbench.setout.bond.BondRegistry;

/** A small wall: a rectangle with an outlet, an arch, a circle and a triangle. */
public final class SampleMural {
  private static final MuralFactory FACTORY = MuralFactory.eINSTANCE;

  private SampleMural() {}

  /** The wall, in inches. */
  public static Mural create() {
    Mural mural = FACTORY.createMural();
    mural.setTitle("Slack water");
    mural.setSite(FACTORY.createSite());
    TileKind tile = FACTORY.createTileKind();
    tile.setId("T6");
    tile.setWidth(152.4);
    tile.setHeight(152.4);
    mural.getTileKinds().add(tile);
    Panel rectangle = panel(mural, "A", Outlines.rectangle(new Frame(0, 914.4, 1828.8, 1219.2)));
    rectangle.getOpenings().add(opening("A1", "outlet", Outlines.rectangle(new Frame(508, 1066.8, 57.15, 88.9))));
    panel(mural, "B", arch());
    panel(mural, "C", Outlines.circle(new Frame(5000, 800, 1219.2, 1219.2)));
    panel(mural, "D", Outlines.polygon(Outlines.contour(triangle()).orElseThrow().points(1)));
    return mural;
  }

  private static Panel panel(Mural mural, String id, Outline outline) {
    Panel panel = FACTORY.createPanel();
    panel.setId(id);
    panel.setTileKind(mural.getTileKinds().get(0));
    panel.setJoint(3.175);
    panel.setBond(FACTORY.createBond());
    panel.setOrigin(FACTORY.createBalancedOrigin());
    panel.setOutline(outline);
    mural.getPanels().add(panel);
    return panel;
  }

  private static Opening opening(String id, String kind, Outline outline) {
    Opening opening = FACTORY.createOpening();
    opening.setId(id);
    opening.setKind(kind);
    opening.setOutline(outline);
    return opening;
  }

  private static PathOutline arch() {
    PathOutline arch = FACTORY.createPathOutline();
    arch.setData("M2500 900 H3500 V1900 A500 500 0 0 1 2500 1900 Z");
    return arch;
  }

  private static PathOutline triangle() {
    PathOutline triangle = FACTORY.createPathOutline();
    triangle.setData("M7000 900 H8500 L7750 2400 Z");
    return triangle;
  }

  /** The wall opened, with everything computed on the calling thread. */
  public static OpenMural open() {
    return OpenMural.of(create(), null, BondRegistry.standard(), Runnable::run, Runnable::run);
  }
}
