// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.motif;

import java.util.Map;

/**
 * Other colours for a drawing.
 *
 * @param name name of the colourway, empty for the colours as drawn
 * @param colours the new colour for each colour that changes
 */
public record Colourway(String name, Map<String, String> colours) {
  /** The colours as drawn. */
  public static final Colourway AS_DRAWN = new Colourway("", Map.of());

  public Colourway {
    colours = Map.copyOf(colours);
  }

  /** The colour that stands for one of the drawing. */
  public String of(String colour) {
    return colours.getOrDefault(colour, colour);
  }
}
