// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import muralbench.base.InputException;
import muralbench.model.Panel;

/** Takes from the model what is worked on the tiles of a panel, as far as it changes the set-out, such as a border. */
@FunctionalInterface
public interface WorkReader {
  /** Passes over all work. */
  WorkReader NONE = (panel, plain) -> plain;

  /**
   * A panel with its works.
   *
   * @param panel the panel in the model
   * @param plain the panel without works
   * @throws InputException if a work cannot be laid
   */
  PanelSpec with(Panel panel, PanelSpec plain) throws InputException;
}
