// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.List;
import muralbench.base.length.LengthUnit;

/**
 * What the set-out and the sheets need to know of a mural.
 *
 * @param title title of the work, may be empty
 * @param client client, may be empty
 * @param revision revision mark, may be empty
 * @param units units of display
 * @param exposure {@code interior-dry}, {@code interior-wet}, {@code exterior} or {@code exterior-frost}
 * @param panels panels in story order
 */
public record MuralSpec(String title, String client, String revision, LengthUnit units, String exposure,
    List<PanelSpec> panels) {
  public MuralSpec {
    panels = List.copyOf(panels);
  }
}
