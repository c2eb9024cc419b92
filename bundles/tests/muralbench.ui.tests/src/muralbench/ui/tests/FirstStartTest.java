// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import muralbench.app.internal.ComposePerspective;
import muralbench.app.internal.findings.FindingsView;
import muralbench.app.internal.welcome.WelcomePage;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IWorkbenchPage;
import org.junit.jupiter.api.Test;

class FirstStartTest extends DesktopTest {
  @Test
  void theWindowHasTheComposeLayoutWithItsViews() {
    IWorkbenchPage page = page();
    assertEquals(ComposePerspective.ID, page.getPerspective().getId());
    assertNotNull(page.findViewReference(FindingsView.ID));
    assertNotNull(page.findViewReference(IPageLayout.ID_OUTLINE));
    assertNotNull(page.findViewReference(IPageLayout.ID_PROP_SHEET));
  }

  @Test
  void helpWelcomeBringsThePageBackOnce() {
    Gestures.run("muralbench.app.welcome");
    Gestures.run("muralbench.app.welcome");
    IEditorPart shown = page().getActiveEditor();
    assertTrue(shown instanceof WelcomePage);
    assertEquals(1, page().getEditorReferences().length);
  }
}
