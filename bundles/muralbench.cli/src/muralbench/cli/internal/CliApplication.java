// SPDX-License-Identifier: EPL-2.0
package muralbench.cli.internal;

import java.time.LocalDate;
import muralbench.extensions.Contributions;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.Version;

/** Starts the command inside the product: takes arguments and registries from the platform, returns the exit code. */
public final class CliApplication implements IApplication {
  /**
   * Set by the start script when it puts {@link #QUOTE} before every argument. The framework takes words such as
   * {@code -clean} or {@code -data} for itself wherever they stand; so quoted they reach us.
   */
  private static final String QUOTED = "muralbench.cli.quoted";

  private static final String QUOTE = "=";

  @Override
  public Object start(IApplicationContext context) {
    String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
    Contributions contributed = Contributions.of(RegistryFactory.getRegistry());
    new FindingsReport(contributed.problems()).table(System.err);
    Desk desk = new Desk(contributed.bonds(), contributed.exporters(), LocalDate.now(), Output.standard(), System.err);
    return new Main(desk, version()).run(Boolean.getBoolean(QUOTED) ? unquoted(arguments) : arguments);
  }

  @Override
  public void stop() {
    // The command ends by itself.
  }

  static String[] unquoted(String[] arguments) {
    String[] plain = new String[arguments.length];
    for (int i = 0; i < plain.length; i++) {
      plain[i] = arguments[i].startsWith(QUOTE) ? arguments[i].substring(QUOTE.length()) : arguments[i];
    }
    return plain;
  }

  private static String version() {
    Version version = FrameworkUtil.getBundle(CliApplication.class).getVersion();
    return version.getMajor() + "." + version.getMinor() + "." + version.getMicro();
  }
}
