// SPDX-License-Identifier: EPL-2.0
package muralbench.brief.internal.dxf;

import java.util.Map;
import muralbench.base.InputException;

/** The units of drawings: values of $INSUNITS in the DXF reference of AutoCAD. */
final class Units {
  private static final Map<Integer, Double> MILLIMETRES = Map.ofEntries(Map.entry(1, 25.4), Map.entry(2, 304.8),
      Map.entry(4, 1.0), Map.entry(5, 10.0), Map.entry(6, 1000.0), Map.entry(7, 1e6), Map.entry(8, 25.4e-6),
      Map.entry(9, 25.4e-3), Map.entry(10, 914.4), Map.entry(13, 1e-3), Map.entry(14, 100.0), Map.entry(15, 1e4),
      Map.entry(16, 1e5), Map.entry(21, 1_200_000.0 / 3937));

  private Units() {}

  /**
   * Millimetres for one unit of the drawing.
   *
   * @param units value of $INSUNITS
   * @param unitless what a drawing without units is in
   */
  static double millimetres(int units, double unitless, DxfProblem problem) throws InputException {
    Double known = units == 0 ? Double.valueOf(unitless) : MILLIMETRES.get(units);
    if (known == null) {
      throw problem.of("units", "units", units);
    }
    return known;
  }
}
