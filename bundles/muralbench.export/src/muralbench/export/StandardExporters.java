// SPDX-License-Identifier: EPL-2.0
package muralbench.export;

import java.util.List;

/** The exporters that come with the program. */
final class StandardExporters {
  private StandardExporters() {}

  static List<Exporter> all() {
    return List.of();
  }
}
