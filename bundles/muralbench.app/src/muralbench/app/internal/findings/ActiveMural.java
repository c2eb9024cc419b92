// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.findings;

import java.util.Optional;
import muralbench.editor.MuralEditor;
import muralbench.editor.OpenMural;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;

/** The mural of the active editor of a page; tells when another takes its place and when its set-out changes. */
final class ActiveMural implements IPartListener2, OpenMural.Listener {
  private final IWorkbenchPage page;
  private final Runnable changed;
  private OpenMural mural;

  ActiveMural(IWorkbenchPage page, Runnable changed) {
    this.page = page;
    this.changed = changed;
    page.addPartListener(this);
    take(editor().map(MuralEditor::openMural).orElse(null));
  }

  Optional<MuralEditor> editor() {
    return page.getActiveEditor() instanceof MuralEditor editor ? Optional.of(editor) : Optional.empty();
  }

  Optional<OpenMural> mural() {
    return Optional.ofNullable(mural);
  }

  void dispose() {
    page.removePartListener(this);
    take(null);
  }

  private void follow() {
    if (take(editor().map(MuralEditor::openMural).orElse(null))) {
      changed.run();
    }
  }

  private boolean take(OpenMural next) {
    if (next == mural) {
      return false;
    }
    if (mural != null) {
      mural.removeListener(this);
    }
    mural = next;
    if (mural != null) {
      mural.addListener(this);
    }
    return true;
  }

  @Override
  public void partActivated(IWorkbenchPartReference reference) {
    follow();
  }

  @Override
  public void partBroughtToTop(IWorkbenchPartReference reference) {
    follow();
  }

  @Override
  public void partClosed(IWorkbenchPartReference reference) {
    follow();
  }

  @Override
  public void setOutChanged(OpenMural changedMural) {
    changed.run();
  }
}
