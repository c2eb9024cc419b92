// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.setout.MuralSetOut;
import muralbench.setout.TileSpec;

/**
 * Whether the body of the tile may stand frost. The classes of water absorption are those of ISO 13006 and EN 14411:
 * over 10 % is group III, for which frost resistance is not required and makers' catalogues say "not frost resistant";
 * up to 0.5 % is group I. Between them absorption does not decide, a test to ASTM C1026 or ISO 10545-12 does. One
 * finding for each kind of tile.
 */
final class FrostBody implements Rule {
  private static final double DENSE = 0.5;
  private static final double OPEN = 10;

  @Override
  public void look(MuralSetOut mural, Consumer<Finding> found) {
    if (mural.spec().exposure().equals("exterior-frost")) {
      Report report = new Report("body.frost", mural.spec().units());
      tiles(mural).forEach(tile -> found.accept(finding(report, tile)));
    }
  }

  private static List<TileSpec> tiles(MuralSetOut mural) {
    return mural.panels().stream().map(panel -> panel.spec().tile()).distinct().toList();
  }

  private static Finding finding(Report report, TileSpec tile) {
    double absorption = tile.waterAbsorption();
    if (absorption < 0) {
      return report.finding(Grade.WARNING, "", ".unknown", Map.of("tile", tile.id()), "tile", tile.id());
    }
    Grade grade = absorption > OPEN ? Grade.ERROR : absorption > DENSE ? Grade.WARNING : Grade.ADVICE;
    String variant = absorption > OPEN ? ".open" : absorption > DENSE ? "" : ".dense";
    return report.finding(grade, "", variant, Map.of("tile", tile.id(), "waterAbsorption", absorption),
        "tile", tile.id(), "absorption", BigDecimal.valueOf(absorption).stripTrailingZeros().toPlainString());
  }
}
