// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.survey;

import muralbench.app.internal.panel.PanelChange;
import muralbench.app.internal.panel.PanelHandler;
import muralbench.editor.OpenMural;
import muralbench.model.Panel;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;

/** Panel > Site Measurements. */
public final class MeasureHandler extends PanelHandler {
  @Override
  protected void open(Shell shell, OpenMural mural, Panel panel) {
    MeasuredWallWizard wizard = MeasuredWallWizard.forPanel(mural, panel);
    if (new WizardDialog(shell, wizard).open() == Window.OK
        && !EcoreUtil.equals(wizard.outline(), panel.getOutline())) {
      mural.execute(PanelChange.measured(mural.mural(), panel, wizard.outline()));
    }
  }
}
