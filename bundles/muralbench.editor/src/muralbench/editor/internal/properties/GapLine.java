// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.editor.OpenMural;
import muralbench.model.Panel;
import muralbench.setout.PanelGap;

/** The line that tells how far it is to the next panel on the wall. */
final class GapLine {
  private static final Messages TEXTS = ModelProperties.TEXTS;
  /** Courses that are out of line by less are in line, mm. */
  private static final double IN_LINE = 1e-3;

  private final LengthUnit unit;

  private GapLine(LengthUnit unit) {
    this.unit = unit;
  }

  /** The line of a panel; none if no panel stands on its right. */
  static Optional<Property> of(OpenMural mural, Panel panel) {
    return PanelGap.of(mural.setOut().panels()).stream()
        .filter(gap -> gap.left().spec().id().equals(panel.getId())).findFirst()
        .map(gap -> Property.info("gap", "place", () -> new GapLine(mural.units()).words(gap)));
  }

  private String words(PanelGap gap) {
    List<String> words = new ArrayList<>();
    words.add(TEXTS.text("gap.across", "across", LengthText.shown(gap.across(), unit), "id",
        gap.right().spec().id()));
    gap.modules().ifPresent(modules -> words.add(TEXTS.text("gap.modules", "modules",
        BigDecimal.valueOf(modules).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString())));
    gap.step().ifPresent(step -> words.add(Math.abs(step) < IN_LINE ? TEXTS.text("gap.level")
        : TEXTS.text("gap.step", "step", LengthText.shown(Math.abs(step), unit))));
    return String.join("; ", words);
  }
}
