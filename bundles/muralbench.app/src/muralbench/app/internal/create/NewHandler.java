// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import muralbench.app.internal.open.MuralOpener;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** File > New Mural. */
public final class NewHandler extends AbstractHandler {
  @Override
  public Object execute(ExecutionEvent event) throws ExecutionException {
    IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
    NewMuralWizard wizard = new NewMuralWizard();
    if (new WizardDialog(window.getShell(), wizard).open() == Window.OK) {
      MuralOpener opener = new MuralOpener(window.getActivePage());
      if (wizard.isDemo()) {
        opener.openDemo();
      } else {
        opener.openNew(wizard.made());
      }
    }
    return null;
  }
}
