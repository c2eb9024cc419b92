// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.export;

import muralbench.editor.OpenMural;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.handlers.HandlerUtil;

/** File > Export. */
public final class ExportHandler extends AbstractHandler {
  @Override
  public Object execute(ExecutionEvent event) throws ExecutionException {
    IEditorPart editor = HandlerUtil.getActiveEditor(event);
    OpenMural mural = editor == null ? null : editor.getAdapter(OpenMural.class);
    if (mural == null) {
      return null;
    }
    Shell shell = HandlerUtil.getActiveShellChecked(event);
    ExportWizard wizard = new ExportWizard(mural);
    if (new WizardDialog(shell, wizard).open() == Window.OK) {
      new WrittenDialog(shell, wizard.folder(), wizard.written()).open();
    }
    return null;
  }
}
