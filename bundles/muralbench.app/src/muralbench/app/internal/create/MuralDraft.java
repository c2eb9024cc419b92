// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import java.util.List;
import muralbench.model.Bond;
import muralbench.model.DisplayUnits;
import muralbench.model.Exposure;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.model.TileKind;

/**
 * A new mural as it is being filled in.
 *
 * @param title title of the work
 * @param client client, may be empty
 * @param units units of display
 * @param exposure what the wall has to stand
 * @param tile the field tile
 * @param panels the panels in story order
 */
record MuralDraft(String title, String client, DisplayUnits units, Exposure exposure, TileDraft tile,
    List<PanelDraft> panels) {
  private static final MuralFactory MAKE = MuralFactory.eINSTANCE;

  MuralDraft {
    panels = List.copyOf(panels);
  }

  /** A start that can be set out as it is, in round numbers of the units (6 in and 150 mm tile): common practice. */
  static MuralDraft start(DisplayUnits units) {
    return units == DisplayUnits.INCHES
        ? start(units, new TileDraft(152.4, 152.4, 9.525, 3.175), new PanelDraft("A", "", 0, 914.4, 1828.8, 1219.2))
        : start(units, new TileDraft(150, 150, 9, 3), new PanelDraft("A", "", 0, 900, 1800, 1200));
  }

  private static MuralDraft start(DisplayUnits units, TileDraft tile, PanelDraft panel) {
    return new MuralDraft("", "", units, Exposure.INTERIOR_DRY, tile, List.of(panel));
  }

  /** The mural, with a straight grid and a balanced origin in every panel. */
  Mural toMural() {
    Mural mural = MAKE.createMural();
    mural.setTitle(title.strip());
    mural.setClient(client.strip());
    mural.setUnits(units);
    mural.setSite(MAKE.createSite());
    mural.getSite().setExposure(exposure);
    TileKind kind = tileKind();
    mural.getTileKinds().add(kind);
    panels.forEach(panel -> mural.getPanels().add(panel(panel, kind)));
    return mural;
  }

  private TileKind tileKind() {
    TileKind kind = MAKE.createTileKind();
    kind.setId("T1");
    kind.setWidth(tile.width());
    kind.setHeight(tile.height());
    kind.setThickness(tile.thickness());
    return kind;
  }

  private Panel panel(PanelDraft draft, TileKind kind) {
    Panel panel = MAKE.createPanel();
    panel.setId(draft.id().strip());
    panel.setTitle(draft.title().strip());
    panel.setOutline(draft.outline());
    panel.setTileKind(kind);
    panel.setJoint(tile.joint());
    Bond bond = MAKE.createBond();
    panel.setBond(bond);
    panel.setOrigin(MAKE.createBalancedOrigin());
    return panel;
  }
}
