// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import muralbench.editor.MuralEditor;
import muralbench.editor.NewPanel;
import muralbench.editor.OpenMural;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.handlers.HandlerUtil;

/** Panel > New Measured Panel. */
public final class NewMeasuredHandler extends AbstractHandler {
  @Override
  public Object execute(ExecutionEvent event) throws ExecutionException {
    if (HandlerUtil.getActiveEditor(event) instanceof MuralEditor editor) {
      OpenMural mural = editor.openMural();
      MeasuredWallWizard wizard = MeasuredWallWizard.forNewPanel(mural);
      if (new WizardDialog(HandlerUtil.getActiveShellChecked(event), wizard).open() == Window.OK) {
        NewPanel added = NewPanel.of(mural.mural(), wizard.outline());
        mural.execute(added.command());
        editor.reveal(added.panel().getId());
      }
    }
    return null;
  }
}
