// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import muralbench.setout.bond.BondRegistry;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Offers the laying patterns, contributed ones included, to the editor, which does not know where they come from. */
public final class Activator implements BundleActivator {
  @Override
  public void start(BundleContext context) {
    context.registerService(BondRegistry.class, Composition.bonds(), null);
  }

  @Override
  public void stop(BundleContext context) {
    // The framework takes the service back by itself.
  }
}
