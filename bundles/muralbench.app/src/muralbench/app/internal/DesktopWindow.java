// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import muralbench.app.internal.open.RecentTracker;
import muralbench.base.Messages;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** The one window. */
final class DesktopWindow extends WorkbenchWindowAdvisor {
  private static final Point BEST_SIZE = new Point(1440, 900);

  DesktopWindow(IWorkbenchWindowConfigurer configurer) {
    super(configurer);
  }

  @Override
  public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
    return new DesktopBars(configurer);
  }

  @Override
  public void preWindowOpen() {
    IWorkbenchWindowConfigurer window = getWindowConfigurer();
    Rectangle screen = Display.getCurrent().getPrimaryMonitor().getClientArea();
    window.setInitialSize(new Point(Math.min(BEST_SIZE.x, screen.width), Math.min(BEST_SIZE.y, screen.height)));
    window.setTitle(Messages.of(DesktopWindow.class).text("window.title"));
    window.setShowCoolBar(true);
    window.setShowMenuBar(true);
    window.setShowStatusLine(true);
    window.setShowPerspectiveBar(false);
    window.setShowProgressIndicator(true);
  }

  @Override
  public void postWindowOpen() {
    RecentTracker.watch(getWindowConfigurer().getWindow().getActivePage());
    WindowTitle.follow(getWindowConfigurer());
  }
}
