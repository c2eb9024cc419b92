// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.commands;

import java.util.List;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.editor.ModelCommand;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.model.DisplayUnits;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Adds a panel that repeats another one, in the next free place on its right. */
public final class RepeatPanelCommand extends ModelCommand {
  private static final Messages TEXTS = Messages.of(RepeatPanelCommand.class);
  private static final double GAP_INCH = 4 * 25.4;
  private static final double GAP_METRIC = 100;

  private final Panel other;
  private final boolean mirrored;
  private final Panel panel = MuralFactory.eINSTANCE.createPanel();

  /** A command. */
  public RepeatPanelCommand(Mural mural, Panel other, boolean mirrored) {
    super(TEXTS.text(mirrored ? "repeat.mirrored" : "repeat", "panel", other.getId()), mural);
    this.other = other;
    this.mirrored = mirrored;
  }

  /** The panel that is added. */
  public Panel panel() {
    return panel;
  }

  /** Only a panel whose outline can be read can be repeated. */
  @Override
  public boolean canExecute() {
    return Placement.frame(other).isPresent();
  }

  @Override
  protected void change() {
    Frame place = place(Placement.frame(other).orElseThrow());
    RepeatedOutline outline = MuralFactory.eINSTANCE.createRepeatedOutline();
    outline.setPanel(other);
    outline.setX(place.x());
    outline.setY(place.y());
    outline.setMirrored(mirrored);
    panel.setId(Names.freePanelId(mural()));
    panel.setTitle(other.getTitle());
    panel.setSurface(other.getSurface());
    panel.setMounting(other.getMounting());
    panel.setBoard(EcoreUtil.copy(other.getBoard()));
    panel.setOutline(outline);
    mural().getPanels().add(panel);
  }

  /** Beside the other panel, and beyond whatever panels stand there. */
  private Frame place(Frame from) {
    double gap = mural().getUnits() == DisplayUnits.MILLIMETRES ? GAP_METRIC : GAP_INCH;
    List<Frame> taken = mural().getPanels().stream().filter(each -> each.getSurface() == other.getSurface())
        .map(Placement::frame).flatMap(Optional::stream).toList();
    Frame place = from.moved(from.width() + gap, 0);
    for (Optional<Frame> at = inTheWay(place, taken); at.isPresent(); at = inTheWay(place, taken)) {
      place = place.moved(at.get().right() + gap - place.x(), 0);
    }
    return place;
  }

  private static Optional<Frame> inTheWay(Frame place, List<Frame> taken) {
    return taken.stream().filter(frame -> frame.x() < place.right() && place.x() < frame.right()
        && frame.y() < place.top() && place.y() < frame.top()).findFirst();
  }
}
