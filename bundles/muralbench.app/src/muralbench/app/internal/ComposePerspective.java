// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import muralbench.app.internal.findings.FindingsView;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The layout for composing a mural: the wall in the middle, outline and properties beside it, findings below. */
public final class ComposePerspective implements IPerspectiveFactory {
  /** Id of the perspective. */
  public static final String ID = "muralbench.app.compose";

  @Override
  public void createInitialLayout(IPageLayout layout) {
    String wall = layout.getEditorArea();
    layout.setEditorAreaVisible(true);
    IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.76f, wall);
    right.addView(IPageLayout.ID_OUTLINE);
    IFolderLayout lowerRight = layout.createFolder("lowerRight", IPageLayout.BOTTOM, 0.4f, "right");
    lowerRight.addView(IPageLayout.ID_PROP_SHEET);
    IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.73f, wall);
    below.addView(FindingsView.ID);
  }
}
