// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.model.Mural;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;
import muralbench.model.SharedLine;
import muralbench.model.SharedOrigin;

/** Which panels take their layout, grid or level line from which. Every panel takes from at most one other. */
final class PanelLinks {
  private static final Messages MESSAGES = Messages.of(PanelLinks.class);

  private final List<Panel> panels;
  private final UnaryOperator<Panel> standIn;

  /**
   * Links between panels.
   *
   * @param panels all panels of the mural in story order
   * @param standIn the panel to read where the mural has another one, such as a changed copy that is tried out
   */
  PanelLinks(List<Panel> panels, UnaryOperator<Panel> standIn) {
    this.panels = panels;
    this.standIn = standIn;
  }

  /** The links of a panel in its mural. */
  static PanelLinks of(Panel panel) {
    return of(panel, panel);
  }

  /** As {@link #of(Panel)}, with a copy in the place of the panel. */
  static PanelLinks of(Panel copy, Panel panel) {
    List<Panel> all = panel.eContainer() instanceof Mural mural ? mural.getPanels() : List.of(panel);
    return new PanelLinks(all, other -> other == panel ? copy : other);
  }

  /** The panel that a panel takes something from. */
  Optional<Panel> next(Panel panel) {
    Panel other = null;
    if (panel.getOutline() instanceof RepeatedOutline repeated) {
      other = repeated.getPanel();
    } else if (panel.getOrigin() instanceof SharedOrigin shared) {
      other = shared.getPanel();
    }
    return Optional.ofNullable(other).filter(each -> !each.eIsProxy()).map(standIn);
  }

  /** Refuses a panel that takes from itself by way of others, or from panels that do. */
  void refuseCircle(Panel panel) throws InputException {
    List<Panel> seen = new ArrayList<>();
    for (Panel at = panel; at != null; at = next(at).orElse(null)) {
      if (seen.contains(at)) {
        String circle = seen.subList(seen.indexOf(at), seen.size()).stream().map(Panel::getId)
            .collect(Collectors.joining(", "));
        throw new InputException(panel.getId(), MESSAGES.text("read.circle", "panels", circle),
            MESSAGES.text("read.circle.remedy"));
      }
      seen.add(at);
    }
  }

  /** The panel whose grid a panel has: itself, unless it shares that of another. */
  Panel gridHead(Panel panel) {
    Panel head = panel;
    while (sharesGrid(head) && next(head).isPresent()) {
      head = next(head).get();
    }
    return head;
  }

  private static boolean sharesGrid(Panel panel) {
    return !(panel.getOutline() instanceof RepeatedOutline) && panel.getOrigin() instanceof SharedOrigin shared
        && shared.getLine() == SharedLine.GRID;
  }

  /** The panels that have the grid of a panel, itself among them, in story order. */
  List<Panel> field(Panel head) {
    List<Panel> field = new ArrayList<>();
    for (Panel each : panels) {
      Panel panel = standIn.apply(each);
      if (panel == head || sharesGrid(panel) && !circles(panel) && gridHead(panel) == head) {
        field.add(panel);
      }
    }
    return field.contains(head) ? field : List.of(head);
  }

  private boolean circles(Panel panel) {
    try {
      refuseCircle(panel);
      return false;
    } catch (InputException e) {
      return true;
    }
  }
}
