// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import muralbench.app.internal.MonitorProgress;
import muralbench.app.internal.Problems;
import muralbench.base.CancelledException;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import muralbench.model.Panel;
import muralbench.pattern.work.PatternReader;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.fit.Alternative;
import muralbench.setout.fit.FitAlternatives;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.dialogs.MessageDialog;
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
      PanelSpec spec = PatternReader.panel(panel);
      if (sharing(spec).isPresent()) {
        MessageDialog.openInformation(shell, TEXTS.text("fit.title"), sharing(spec).get());
        return;
      }
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

  /** Why the choices for one panel alone would mislead, if it has its start in common with others. */
  private static Optional<String> sharing(PanelSpec spec) {
    if (spec.origin() instanceof OriginSpec.Shared shared) {
      String all = shared.panels().stream().map(PanelSpec::id).collect(Collectors.joining(", "));
      return Optional.of(TEXTS.text("fit.shared", "panels", all));
    }
    return spec.origin() instanceof OriginSpec.Level level
        ? Optional.of(TEXTS.text("fit.level", "panel", spec.id(), "other", level.with().id())) : Optional.empty();
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
