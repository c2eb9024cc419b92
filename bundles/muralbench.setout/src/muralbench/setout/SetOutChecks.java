// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import java.util.List;
import muralbench.base.Finding;

/** Looks over a set-out and reports what breaks the rules of layout and joints. */
public final class SetOutChecks {
  private SetOutChecks() {}

  /** The findings for a mural, heaviest first, then in the order of the panels. */
  public static List<Finding> findings(MuralSetOut setOut) {
    throw new UnsupportedOperationException();
  }
}
