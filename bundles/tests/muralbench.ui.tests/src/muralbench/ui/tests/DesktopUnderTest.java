// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import java.util.HashMap;
import java.util.Map;
import muralbench.app.internal.Application;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.Bundle;

/** The desktop itself, without the words the test harness was started with, which are not meant for it. */
public final class DesktopUnderTest implements IApplication {
  private final Application desktop = new Application();

  @Override
  public Object start(IApplicationContext context) throws Exception {
    return desktop.start(new WithoutWords(context));
  }

  @Override
  public void stop() {
    desktop.stop();
  }

  private record WithoutWords(IApplicationContext context) implements IApplicationContext {
    @Override
    public Map<?, ?> getArguments() {
      Map<Object, Object> arguments = new HashMap<>(context.getArguments());
      arguments.put(APPLICATION_ARGS, new String[0]);
      return arguments;
    }

    @Override
    public void applicationRunning() {
      context.applicationRunning();
    }

    @Override
    public String getBrandingApplication() {
      return context.getBrandingApplication();
    }

    @Override
    public String getBrandingName() {
      return context.getBrandingName();
    }

    @Override
    public String getBrandingDescription() {
      return context.getBrandingDescription();
    }

    @Override
    public String getBrandingId() {
      return context.getBrandingId();
    }

    @Override
    public String getBrandingProperty(String key) {
      return context.getBrandingProperty(key);
    }

    @Override
    public Bundle getBrandingBundle() {
      return context.getBrandingBundle();
    }

    @Override
    public void setResult(Object result, IApplication application) {
      context.setResult(result, application);
    }
  }
}
