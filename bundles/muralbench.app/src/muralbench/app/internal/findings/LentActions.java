// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.findings;

import java.util.List;
import java.util.Optional;
import muralbench.editor.MuralEditor;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;

/** The editor's undo and redo, lent to a view, so that they work while the view has the focus. */
final class LentActions {
  private static final List<String> IDS = List.of(ActionFactory.UNDO.getId(), ActionFactory.REDO.getId());

  private LentActions() {}

  /** Gives a view the actions of an editor, or takes them back where there is no editor. */
  static void lend(Optional<MuralEditor> editor, IActionBars bars) {
    ActionRegistry actions =
        editor.map(found -> (ActionRegistry) found.getAdapter(ActionRegistry.class)).orElse(null);
    IDS.forEach(id -> bars.setGlobalActionHandler(id, actions == null ? null : actions.getAction(id)));
    bars.updateActionBars();
  }
}
