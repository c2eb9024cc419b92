// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import java.nio.file.Path;
import muralbench.base.Messages;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;

/** The desktop. Ends with 0, or with 2 and a sentence on standard error where there is no screen. */
public final class Application implements IApplication {
  private static final Integer NO_SCREEN = 2;

  @Override
  public Object start(IApplicationContext context) {
    StartArguments arguments = StartArguments.of(
        (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS), Path.of(""));
    Workspace.choose();
    Display display;
    try {
      display = PlatformUI.createDisplay();
    } catch (SWTError | UnsatisfiedLinkError noScreen) {
      context.applicationRunning();
      System.err.println(Messages.of(Application.class).text("start.noScreen", "reason", noScreen.getMessage()));
      return NO_SCREEN;
    }
    try {
      int code = PlatformUI.createAndRunWorkbench(display, new DesktopAdvisor(arguments));
      return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
    } finally {
      display.dispose();
    }
  }

  @Override
  public void stop() {
    if (PlatformUI.isWorkbenchRunning()) {
      IWorkbench workbench = PlatformUI.getWorkbench();
      workbench.getDisplay().syncExec(workbench::close);
    }
  }
}
