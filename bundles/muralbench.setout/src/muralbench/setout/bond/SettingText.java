// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import muralbench.base.length.LengthFormatException;
import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondSetting.Form;

/** The texts of settings that are lengths, in the units of a mural; where a person types, a bare number is in those. */
public final class SettingText {
  private SettingText() {}

  /** Whether a setting is a length, or several. */
  public static boolean isLength(BondSetting setting) {
    return setting.form() == Form.LENGTH || setting.form() == Form.LENGTHS;
  }

  /** What a person typed, as the file keeps it: each length with its unit. What is no length stays as it is. */
  public static String typed(String text, LengthUnit units) {
    return each(text, units, length -> LengthText.exact(length, units));
  }

  /** What the file keeps, as it is shown in the units of a mural. What is no length stays as it is. */
  public static String shown(String text, LengthUnit units) {
    return each(text, LengthUnit.MILLIMETRE, length -> LengthText.exact(length, units));
  }

  /**
   * {@link Bond#start} with round lengths.
   *
   * @param width of the box around the panel, mm
   * @param height of that box, mm
   * @param joint width of the joints, mm
   */
  public static Map<String, String> start(Bond bond, double width, double height, TileSpec tile, double joint,
      LengthUnit units) {
    Map<String, String> start = new HashMap<>(bond.start(width, height, tile, joint));
    for (BondSetting setting : bond.settings()) {
      if (isLength(setting)) {
        start.computeIfPresent(setting.name(), (name, text) -> each(text, LengthUnit.MILLIMETRE,
            length -> LengthText.exact(LengthText.rounded(length, units), units)));
      }
    }
    return start;
  }

  private static String each(String text, LengthUnit bare, DoubleFunction<String> written) {
    return Arrays.stream(text.split(",")).map(String::strip).filter(part -> !part.isEmpty()).map(part -> {
      try {
        return written.apply(LengthText.parse(part, bare));
      } catch (LengthFormatException e) {
        return part;
      }
    }).collect(Collectors.joining(", "));
  }
}
