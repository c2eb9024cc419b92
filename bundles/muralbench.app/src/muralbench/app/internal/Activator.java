// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import muralbench.extensions.Contributions;
import muralbench.setout.bond.BondRegistry;
import org.eclipse.core.runtime.ILog;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Offers the laying patterns, contributed ones included, to the editor, which does not know where they come from. */
public final class Activator implements BundleActivator {
  @Override
  public void start(BundleContext context) {
    Contributions contributions = Composition.all();
    context.registerService(BondRegistry.class, contributions.bonds(), null);
    contributions.problems().forEach(problem -> ILog.of(Activator.class)
        .warn(problem.place() + ": " + problem.message() + ". " + problem.remedy()));
  }

  @Override
  public void stop(BundleContext context) {
    // The framework takes the service back by itself.
  }
}
