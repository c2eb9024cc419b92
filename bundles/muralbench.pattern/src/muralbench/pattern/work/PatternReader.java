// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.work;

import muralbench.base.InputException;
import muralbench.model.Mural;
import muralbench.model.Panel;
import muralbench.setout.MuralReader;
import muralbench.setout.MuralSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.WorkReader;

/** Takes what the set-out needs from the model, the borders of panels included. */
public final class PatternReader {
  private static final WorkReader WORKS = new BorderReader();

  private PatternReader() {}

  /**
   * The whole mural.
   *
   * @throws InputException as {@link MuralReader#mural(Mural)}, and if a border cannot be laid or does not close
   */
  public static MuralSpec mural(Mural mural) throws InputException {
    return MuralReader.mural(mural, WORKS);
  }

  /** One panel; see {@link #mural}. Whether its ids are unique in the mural is not looked at. */
  public static PanelSpec panel(Panel panel) throws InputException {
    return panel(panel, panel);
  }

  /** A changed copy of a panel, read as if it stood in the mural in the place of that panel. */
  public static PanelSpec panel(Panel copy, Panel panel) throws InputException {
    return MuralReader.panel(copy, panel, WORKS);
  }
}
