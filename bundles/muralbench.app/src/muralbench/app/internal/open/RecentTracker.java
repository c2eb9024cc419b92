// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.open;

import muralbench.editor.OpenMural;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;

/** Puts a file on the list of recent files when a mural is saved under it. */
public final class RecentTracker implements IPartListener2, OpenMural.Listener {
  private RecentTracker() {}

  /** Watches the editors of a page. */
  public static void watch(IWorkbenchPage page) {
    page.addPartListener(new RecentTracker());
  }

  @Override
  public void partOpened(IWorkbenchPartReference reference) {
    OpenMural mural = mural(reference);
    if (mural != null) {
      mural.addListener(this);
    }
  }

  @Override
  public void partClosed(IWorkbenchPartReference reference) {
    OpenMural mural = mural(reference);
    if (mural != null) {
      mural.removeListener(this);
    }
  }

  private static OpenMural mural(IWorkbenchPartReference reference) {
    return reference.getPart(false) == null ? null : reference.getPart(false).getAdapter(OpenMural.class);
  }

  @Override
  public void stateChanged(OpenMural mural) {
    if (!mural.dirty()) {
      mural.file().ifPresent(RecentFiles.ofWorkbench()::add);
    }
  }
}
