// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import muralbench.base.Messages;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;

/** Puts the name of the mural at hand into the title of the window. */
final class WindowTitle implements IPartListener2 {
  private static final Messages TEXTS = Messages.of(WindowTitle.class);

  private final IWorkbenchWindowConfigurer window;
  private final IWorkbenchPage page;

  private WindowTitle(IWorkbenchWindowConfigurer window) {
    this.window = window;
    this.page = window.getWindow().getActivePage();
  }

  /** Keeps the title of a window in step with its active editor. */
  static void follow(IWorkbenchWindowConfigurer window) {
    WindowTitle title = new WindowTitle(window);
    title.page.addPartListener(title);
    title.show();
  }

  private void show() {
    IEditorPart editor = page.getActiveEditor();
    window.setTitle(editor == null ? TEXTS.text("window.title")
        : TEXTS.text("window.titleOf", "name", editor.getTitle()));
  }

  @Override
  public void partActivated(IWorkbenchPartReference reference) {
    show();
  }

  @Override
  public void partBroughtToTop(IWorkbenchPartReference reference) {
    show();
  }

  @Override
  public void partClosed(IWorkbenchPartReference reference) {
    show();
  }

  @Override
  public void partInputChanged(IWorkbenchPartReference reference) {
    show();
  }
}
