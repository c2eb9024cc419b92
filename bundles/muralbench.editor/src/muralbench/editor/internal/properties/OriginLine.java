// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.properties.PanelLines.Start;
import muralbench.model.FixedOrigin;
import muralbench.model.MuralFactory;
import muralbench.model.Panel;
import muralbench.model.SharedLine;
import muralbench.model.SharedOrigin;

/** The line that says where the pattern of a panel starts: on its own, or in common with another panel. */
final class OriginLine {
  private static final Messages TEXTS = ModelProperties.TEXTS;

  /** A choice after those of {@link Start}. */
  private record Shared(SharedLine line, Panel panel) {
    String label() {
      return TEXTS.text("origin." + line.name(), "id", panel.getId());
    }

    boolean same(SharedOrigin origin) {
      return line == origin.getLine() && panel == origin.getPanel();
    }
  }

  private final Panel panel;
  private final List<Shared> shared = new ArrayList<>();

  OriginLine(OpenMural mural, Panel panel) {
    this.panel = panel;
    SharedOrigin now = panel.getOrigin() instanceof SharedOrigin origin ? origin : null;
    for (SharedLine line : SharedLine.values()) {
      for (Panel other : mural.mural().getPanels()) {
        Shared choice = new Shared(line, other);
        boolean possible = line == SharedLine.GRID ? PanelChoices.grid(panel, other) : PanelChoices.level(panel, other);
        if (possible || now != null && choice.same(now)) {
          shared.add(choice);
        }
      }
    }
  }

  /** The line; {@code start} gives the panel a start of its own. */
  Property line(Consumer<Start> start) {
    List<String> labels = new ArrayList<>();
    for (Start each : Start.values()) {
      labels.add(TEXTS.text("origin." + each.name()));
    }
    shared.forEach(each -> labels.add(each.label()));
    int own = Start.values().length;
    return Property.choice("origin", "tiling", labels.toArray(String[]::new), this::now, index -> {
      if (index < own) {
        start.accept(Start.values()[index]);
      } else {
        share(shared.get(index - own));
      }
    });
  }

  private int now() {
    if (panel.getOrigin() instanceof SharedOrigin origin) {
      for (int i = 0; i < shared.size(); i++) {
        if (shared.get(i).same(origin)) {
          return Start.values().length + i;
        }
      }
      return -1;
    }
    return (panel.getOrigin() instanceof FixedOrigin ? Start.FIXED : Start.BALANCED).ordinal();
  }

  private void share(Shared choice) {
    SharedOrigin origin = MuralFactory.eINSTANCE.createSharedOrigin();
    origin.setLine(choice.line());
    origin.setPanel(choice.panel());
    panel.setOrigin(origin);
  }
}
