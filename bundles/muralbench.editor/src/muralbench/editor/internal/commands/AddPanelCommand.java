// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.commands;

import java.util.Optional;
import muralbench.base.Messages;
import muralbench.editor.ModelCommand;
import muralbench.editor.RepeatedPanel;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Outlines;
import muralbench.editor.internal.geometry.Placement;
import muralbench.model.Bond;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.model.TileKind;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Adds a panel that takes tile, joint and bond from its nearest neighbour. */
public final class AddPanelCommand extends ModelCommand {
  private static final Messages TEXTS = Messages.of(AddPanelCommand.class);
  private static final double INCH = 25.4;

  private final Frame frame;
  private final Outline outline;
  private final Panel panel = MuralFactory.eINSTANCE.createPanel();

  /** A command for a rectangular panel. */
  public AddPanelCommand(Mural mural, Frame frame) {
    this(mural, Outlines.rectangle(frame), frame);
  }

  /** A command for a panel with an outline, owned by nobody yet; {@code frame} is the frame around it. */
  public AddPanelCommand(Mural mural, Outline outline, Frame frame) {
    super(TEXTS.text("add.panel", "id", Names.freePanelId(mural)), mural);
    this.outline = outline;
    this.frame = frame;
  }

  /** The panel that is added. */
  public Panel panel() {
    return panel;
  }

  @Override
  protected void change() {
    Optional<Panel> neighbour = mural().getPanels().stream().min((a, b) -> Double.compare(distance(a), distance(b)))
        .map(RepeatedPanel::original);
    panel.setId(Names.freePanelId(mural()));
    panel.setTitle("");
    panel.setOutline(outline);
    panel.setTileKind(neighbour.map(Panel::getTileKind).orElseGet(this::anyTile));
    panel.setJoint(neighbour.map(Panel::getJoint).orElse(INCH / 8));
    panel.setEdgeGap(neighbour.map(Panel::getEdgeGap).orElse(0.0));
    panel.setBond(neighbour.map(Panel::getBond).map(EcoreUtil::copy).orElseGet(AddPanelCommand::grid));
    panel.setOrigin(MuralFactory.eINSTANCE.createBalancedOrigin());
    mural().getPanels().add(panel);
  }

  private double distance(Panel other) {
    return Placement.frame(other)
        .map(at -> Math.hypot(at.middleX() - frame.middleX(), at.middleY() - frame.middleY()))
        .orElse(Double.MAX_VALUE);
  }

  private TileKind anyTile() {
    if (!mural().getTileKinds().isEmpty()) {
      return mural().getTileKinds().get(0);
    }
    TileKind tile = MuralFactory.eINSTANCE.createTileKind();
    tile.setId(Names.freeTileId(mural()));
    tile.setWidth(6 * INCH);
    tile.setHeight(6 * INCH);
    mural().getTileKinds().add(tile);
    return tile;
  }

  private static Bond grid() {
    Bond bond = MuralFactory.eINSTANCE.createBond();
    bond.setKind("grid");
    return bond;
  }
}
