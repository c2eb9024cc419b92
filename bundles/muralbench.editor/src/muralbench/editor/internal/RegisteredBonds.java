// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import muralbench.setout.bond.BondRegistry;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceReference;

/** Finds the laying patterns which the desktop offers as an OSGi service. */
public final class RegisteredBonds {
  private RegisteredBonds() {}

  /** The patterns offered, or the standard ones where nobody offers any. */
  public static BondRegistry current() {
    Bundle bundle = FrameworkUtil.getBundle(RegisteredBonds.class);
    BundleContext context = bundle == null ? null : bundle.getBundleContext();
    ServiceReference<BondRegistry> offered = context == null ? null : context.getServiceReference(BondRegistry.class);
    BondRegistry registry = offered == null ? null : context.getService(offered);
    return registry == null ? BondRegistry.standard() : registry;
  }
}
