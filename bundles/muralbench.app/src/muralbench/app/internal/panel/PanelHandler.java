// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.List;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import muralbench.editor.RepeatedPanel;
import muralbench.model.Opening;
import muralbench.model.Panel;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.gef.EditPart;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.handlers.HandlerUtil;

/** A command on the selected panel, or on the only one there is. */
public abstract class PanelHandler extends AbstractHandler {
  private static final Messages TEXTS = Messages.of(PanelHandler.class);

  @Override
  public final Object execute(ExecutionEvent event) throws ExecutionException {
    IEditorPart editor = HandlerUtil.getActiveEditor(event);
    OpenMural mural = editor == null ? null : editor.getAdapter(OpenMural.class);
    if (mural != null) {
      Shell shell = HandlerUtil.getActiveShellChecked(event);
      ISelection selection = editor.getSite().getSelectionProvider().getSelection();
      panel(mural, selection).ifPresentOrElse(panel -> open(shell, mural, meant(panel)),
          () -> MessageDialog.openInformation(shell, TEXTS.text("select.title"), TEXTS.text("select.message")));
    }
    return null;
  }

  private static Optional<Panel> panel(OpenMural mural, ISelection selection) {
    Object first = selection instanceof IStructuredSelection structured ? structured.getFirstElement() : null;
    Object thing = first instanceof EditPart part ? part.getModel() : null;
    if (thing instanceof Panel panel) {
      return Optional.of(panel);
    }
    if (thing instanceof Opening opening && opening.eContainer() instanceof Panel panel) {
      return Optional.of(panel);
    }
    List<Panel> all = mural.mural().getPanels();
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }

  /** The panel that the command changes: one that repeats another has no layout of its own. */
  protected Panel meant(Panel selected) {
    return RepeatedPanel.original(selected);
  }

  /** Does the work. */
  protected abstract void open(Shell shell, OpenMural mural, Panel panel);
}
