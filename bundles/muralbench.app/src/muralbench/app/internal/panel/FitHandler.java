// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import muralbench.app.internal.MonitorProgress;
import muralbench.app.internal.Problems;
import muralbench.base.CancelledException;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import muralbench.model.Panel;
import muralbench.setout.MuralReader;
import muralbench.setout.PanelSpec;
import muralbench.setout.fit.Alternative;
import muralbench.setout.fit.FitAlternatives;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;

/** Panel > Compare Fits: works out the choices beside the user interface, then shows them. */
public final class FitHandler extends PanelHandler {
  private static final Messages TEXTS = Messages.of(FitHandler.class);

  @Override
  protected void open(Shell shell, OpenMural mural, Panel panel) {
    List<Alternative> choices = new ArrayList<>();
    try {
      PanelSpec spec = MuralReader.panel(panel);
      PlatformUI.getWorkbench().getProgressService()
          .busyCursorWhile(monitor -> choices.addAll(alternatives(spec, mural, monitor)));
    } catch (InterruptedException cancelled) {
      return;
    } catch (InputException e) {
      Problems.show(shell, TEXTS.text("fit.title"), e);
      return;
    } catch (InvocationTargetException e) {
      Problems.show(shell, TEXTS.text("fit.title"), e.getCause());
      return;
    }
    FitDialog dialog = new FitDialog(shell, mural.units(), choices);
    if (dialog.open() == Window.OK) {
      mural.execute(PanelChange.to(mural.mural(), panel, dialog.chosen()));
    }
  }

  private static List<Alternative> alternatives(PanelSpec spec, OpenMural mural, IProgressMonitor monitor)
      throws InvocationTargetException, InterruptedException {
    try {
      return FitAlternatives.of(spec, mural.bonds(), mural.units(), new MonitorProgress(monitor));
    } catch (CancelledException e) {
      throw new InterruptedException(e.getMessage());
    } catch (InputException | RuntimeException e) {
      throw new InvocationTargetException(e);
    }
  }
}
