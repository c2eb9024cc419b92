// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import muralbench.app.internal.open.MuralOpener;
import muralbench.app.internal.welcome.WelcomePage;
import org.eclipse.jface.dialogs.TrayDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Sets the workbench up: one perspective, kept layout, and what to show first. */
final class DesktopAdvisor extends WorkbenchAdvisor {
  private final StartArguments arguments;

  DesktopAdvisor(StartArguments arguments) {
    this.arguments = arguments;
  }

  @Override
  public void initialize(IWorkbenchConfigurer configurer) {
    super.initialize(configurer);
    configurer.setSaveAndRestore(true);
    TrayDialog.setDialogHelpAvailable(false);
    Window.setDefaultImages(Pictures.window());
  }

  @Override
  public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
    return new DesktopWindow(configurer);
  }

  @Override
  public String getInitialWindowPerspectiveId() {
    return ComposePerspective.ID;
  }

  @Override
  public void postStartup() {
    Display.getCurrent().asyncExec(this::showFirst);
  }

  private void showFirst() {
    IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    IWorkbenchPage page = window == null ? null : window.getActivePage();
    if (page == null) {
      return;
    }
    MuralOpener opener = new MuralOpener(page);
    arguments.files().forEach(opener::open);
    if (arguments.demo()) {
      opener.openDemo();
    }
    if (page.getEditorReferences().length == 0) {
      WelcomePage.show(page);
    }
  }
}
