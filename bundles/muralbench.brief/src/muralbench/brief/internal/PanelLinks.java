// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import muralbench.base.InputException;
import muralbench.model.Panel;

/**
 * What panels take from other panels, by the id of the other. They are put together once all panels are made, since a
 * panel may come before the one it takes something from.
 */
final class PanelLinks {
  /** One reference: where it stands, the panel it belongs to, and what to do with the panel it leads to. */
  private record Link(Field field, Panel owner, Consumer<Panel> found) {}

  private final List<Link> links = new ArrayList<>();

  void add(Field field, Panel owner, Consumer<Panel> found) {
    links.add(new Link(field, owner, found));
  }

  /** Lets every reference lead to its panel. */
  void resolve(List<Panel> panels) throws InputException {
    for (Link link : links) {
      link.found().accept(target(link, panels));
    }
  }

  private static Panel target(Link link, List<Panel> panels) throws InputException {
    String id = link.field().text("");
    String pointer = link.field().pointer();
    if (panels.size() == 1) {
      throw BriefProblem.at(pointer, "panel.only");
    }
    Panel target = panels.stream().filter(panel -> panel.getId().equals(id)).findFirst().orElse(null);
    if (target == null) {
      throw BriefProblem.at(pointer, "panel", "id", id, "known", String.join(", ",
          panels.stream().filter(panel -> panel != link.owner()).map(Panel::getId).toList()));
    }
    if (target == link.owner()) {
      throw BriefProblem.at(pointer, "panel.self", "id", id);
    }
    return target;
  }
}
