// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import muralbench.base.length.LengthText;
import muralbench.base.length.LengthUnit;

/**
 * A rectangular panel as it is being filled in. Lengths in millimetres; not yet checked.
 *
 * @param id short name
 * @param title title, may be empty
 * @param x left edge
 * @param y bottom edge above the finished floor
 * @param width width
 * @param height height
 */
record PanelDraft(String id, String title, double x, double y, double width, double height) {
  /** The same size again, to the right of this one and clear of it, at a round place. */
  PanelDraft next(String nextId, double gap, LengthUnit unit) {
    return new PanelDraft(nextId, "", LengthText.rounded(x + width + gap, unit), y, width, height);
  }
}
