// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.work;

import java.util.List;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.model.BorderBand;
import muralbench.model.Panel;
import muralbench.setout.MuralReader;
import muralbench.setout.PanelSpec;
import muralbench.setout.WorkReader;

/** Lays the border of a panel, if it has one. */
public final class BorderReader implements WorkReader {
  @Override
  public PanelSpec with(Panel panel, PanelSpec plain) throws InputException {
    Optional<LaidBorder> border = border(panel, plain);
    return border.isPresent() ? plain.withBand(border.get().band()) : plain;
  }

  /**
   * The border of a panel with what is painted on it; empty if the panel has none.
   *
   * @param plain the panel without it
   * @throws InputException if it does not close, or is no border
   */
  public static Optional<LaidBorder> border(Panel panel, PanelSpec plain) throws InputException {
    List<BorderBand> bands = panel.getWorks().stream().filter(BorderBand.class::isInstance)
        .map(BorderBand.class::cast).toList();
    if (bands.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new BorderLaying(bands.get(0), plain, MotifReader.around(panel),
        MuralReader.units(panel)).laid());
  }
}
