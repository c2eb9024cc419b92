// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;

/** The bonds that come with the program. */
final class StandardBonds {
  private StandardBonds() {}

  static List<Bond> all() {
    return List.of(new CourseBond("grid", false), new CourseBond("running", true), new DiagonalBond(),
        new HerringboneBond(), new BasketBond(), new HexagonBond(), new OctagonBond(),
        new TableBond("two-size", "0 0 2 2; 2 0 1 1", "2 1; -1 2"),
        new TableBond("three-size", "0 0 2 2; 2 0 1 2; 0 2 2 1; 2 2 1 1", "3 0; 1 3"), new TableBond("table", "", ""),
        new RingBond());
  }
}
