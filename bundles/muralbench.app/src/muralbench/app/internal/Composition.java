// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import muralbench.export.ExporterRegistry;
import muralbench.extensions.Contributions;
import muralbench.setout.bond.BondRegistry;
import org.eclipse.core.runtime.Platform;

/** The parts the desktop is composed of: our own and those that other plug-ins contribute. */
public final class Composition {
  private Composition() {}

  /** Everything, with the contributions that cannot be used. */
  static Contributions all() {
    return Contributions.of(Platform.getExtensionRegistry());
  }

  /** All laying patterns. */
  public static BondRegistry bonds() {
    return Contributions.bonds(Platform.getExtensionRegistry());
  }

  /** All exporters. */
  public static ExporterRegistry exporters() {
    return Contributions.exporters(Platform.getExtensionRegistry());
  }
}
