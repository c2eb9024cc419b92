// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import muralbench.base.InputException;
import muralbench.model.Mural;
import muralbench.model.Outline;
import muralbench.model.Panel;
import muralbench.setout.geometry.Contour;

/** Takes what the set-out needs from the model. */
public final class MuralReader {
  private MuralReader() {}

  /**
   * The whole mural.
   *
   * @throws InputException naming the panel or opening if a value is missing or out of range or a path cannot be read
   */
  public static MuralSpec mural(Mural mural) throws InputException {
    throw new UnsupportedOperationException();
  }

  /** One panel; see {@link #mural}. */
  public static PanelSpec panel(Panel panel) throws InputException {
    throw new UnsupportedOperationException();
  }

  /**
   * An outline as a counter-clockwise contour.
   *
   * @param owner id of the panel or opening it belongs to, for errors
   */
  public static Contour outline(Outline outline, String owner) throws InputException {
    throw new UnsupportedOperationException();
  }
}
