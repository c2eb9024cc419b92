// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import muralbench.export.ExporterRegistry;
import muralbench.setout.bond.BondRegistry;

/** The parts the desktop is composed of: our own and those that other plug-ins contribute. */
public final class Composition {
  private Composition() {}

  /** All laying patterns. */
  public static BondRegistry bonds() {
    return BondRegistry.standard();
  }

  /** All exporters. */
  public static ExporterRegistry exporters() {
    return ExporterRegistry.standard();
  }
}
