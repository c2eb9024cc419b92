// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.check.internal;

import muralbench.setout.PanelSpec;

/** What the rules for offset courses have in common. */
final class Offset {
  /**
   * Sides over 15 in come under the rules for offset courses. The rules speak of nominal size; work size is not
   * larger than that, and a nominal 16 in tile is well over 15 in, so work size decides the same.
   */
  private static final double LARGE = 381;
  private static final double ROUNDING = 1e-9;

  private Offset() {}

  /** How far each course is shifted to the nearer side, as a share of the module, 0 to 1/2. */
  static double share(PanelSpec panel) {
    double offset = panel.bond().offset();
    double share = offset - Math.floor(offset);
    double nearer = Math.min(share, 1 - share);
    return nearer < ROUNDING ? 0 : nearer;
  }

  static boolean isLarge(double side) {
    return side > LARGE + Report.ROUNDING;
  }
}
