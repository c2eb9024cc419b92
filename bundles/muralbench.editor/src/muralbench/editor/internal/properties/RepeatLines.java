// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.util.ArrayList;
import java.util.List;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.commands.OwnLayout;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.editor.internal.properties.Entries.Range;
import muralbench.model.Panel;
import muralbench.model.RepeatedOutline;

/** The lines of a panel that repeats another one: which, how and where. The rest is that of the other panel. */
final class RepeatLines {
  private static final String GROUP = "place";

  private final OpenMural mural;
  private final Panel panel;
  private final RepeatedOutline outline;

  RepeatLines(OpenMural mural, Panel panel, RepeatedOutline outline) {
    this.mural = mural;
    this.panel = panel;
    this.outline = outline;
  }

  List<Property> lines() {
    LengthUnit unit = mural.units();
    List<Property> lines = new ArrayList<>(List.of(repeats(), mirrored()));
    lines.add(Entries.length("left", GROUP, unit, Range.ANY, outline::getX, outline::setX));
    lines.add(Entries.length("bottom", GROUP, unit, Range.ANY, outline::getY, outline::setY));
    Placement.frame(panel).ifPresent(frame -> lines.addAll(size(frame, unit)));
    return lines;
  }

  private static List<Property> size(Frame frame, LengthUnit unit) {
    return List.of(Property.info("width", GROUP, () -> LengthText.shown(frame.width(), unit)),
        Property.info("height", GROUP, () -> LengthText.shown(frame.height(), unit)));
  }

  /** The panel that is repeated; the last choice is to repeat none any more. */
  private Property repeats() {
    List<Panel> others = mural.mural().getPanels().stream().filter(other -> PanelChoices.free(panel, other)).toList();
    List<String> labels = new ArrayList<>();
    others.forEach(other -> labels.add(ModelProperties.TEXTS.text("repeats.panel", "id", other.getId())));
    labels.add(ModelProperties.TEXTS.text("repeats.own"));
    return Property.choice("repeats", GROUP, labels.toArray(String[]::new), () -> others.indexOf(outline.getPanel()),
        index -> {
          if (index < others.size()) {
            outline.setPanel(others.get(index));
          } else {
            OwnLayout.give(mural.mural(), panel);
          }
        });
  }

  private Property mirrored() {
    String[] labels = {ModelProperties.TEXTS.text("mirrored.no"), ModelProperties.TEXTS.text("mirrored.yes")};
    return Property.choice("mirrored", GROUP, labels, () -> outline.isMirrored() ? 1 : 0,
        index -> outline.setMirrored(index == 1));
  }
}
