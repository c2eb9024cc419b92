// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.bond;

import java.util.List;

/** The bonds that come with the program. */
final class StandardBonds {
  private StandardBonds() {}

  static List<Bond> all() {
    return List.of(new CourseBond("grid", false), new CourseBond("running", true));
  }
}
