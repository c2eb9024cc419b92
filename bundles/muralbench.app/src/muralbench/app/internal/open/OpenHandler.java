// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.open;

import java.nio.file.Path;
import muralbench.base.Messages;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** File > Open. */
public final class OpenHandler extends AbstractHandler {
  private static final Messages TEXTS = Messages.of(OpenHandler.class);

  @Override
  public Object execute(ExecutionEvent event) throws ExecutionException {
    IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
    FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN | SWT.MULTI);
    dialog.setText(TEXTS.text("open.title"));
    dialog.setFilterExtensions(new String[] {"*.mural;*.json", "*.mural", "*.json", "*"});
    dialog.setFilterNames(new String[] {TEXTS.text("open.both"), TEXTS.text("open.murals"), TEXTS.text("open.briefs"),
        TEXTS.text("open.all")});
    if (dialog.open() != null) {
      MuralOpener opener = new MuralOpener(window.getActivePage());
      for (String name : dialog.getFileNames()) {
        opener.open(Path.of(dialog.getFilterPath(), name));
      }
    }
    return null;
  }
}
