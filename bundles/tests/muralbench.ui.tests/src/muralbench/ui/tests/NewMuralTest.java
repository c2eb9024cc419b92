// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import muralbench.app.internal.create.NewMuralWizard;
import muralbench.model.Panel;
import muralbench.model.RectangleOutline;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class NewMuralTest extends DesktopTest {
  private final NewMuralWizard wizard = new NewMuralWizard();
  private WizardDialog dialog;

  @BeforeEach
  void openTheWizard() {
    dialog = new WizardDialog(page().getWorkbenchWindow().getShell(), wizard);
    dialog.setBlockOnOpen(false);
    dialog.open();
  }

  @AfterEach
  void close() {
    dialog.close();
  }

  @Test
  void itCannotFinishBeforeThePanelsWereSeen() {
    assertFalse(wizard.canFinish());
    show("panels");
    await("the panels are set out", wizard::canFinish);
  }

  @Test
  void theMuralIsMadeFromTheMeasurements() {
    show("panels");
    type("72 in", "5 ft 6 in");
    await("the panels are set out", wizard::canFinish);
    assertTrue(wizard.performFinish());
    Panel panel = wizard.made().getPanels().get(0);
    assertEquals(66 * 25.4, ((RectangleOutline) panel.getOutline()).getWidth(), 1e-9);
    assertEquals(6 * 25.4, panel.getTileKind().getWidth(), 1e-9);
  }

  @Test
  void aWordThatIsNoLengthIsRefusedWithItsField() {
    show("panels");
    type("72 in", "wide");
    assertFalse(wizard.canFinish());
    String message = page("panels").getErrorMessage();
    assertTrue(message != null && message.contains("Width") && message.contains("wide"), message);
  }

  @Test
  void aPanelSmallerThanItsTileIsRefusedByTheSetOut() {
    show("panels");
    type("72 in", "2 in");
    await("the set-out has answered", () -> page("panels").getErrorMessage() != null);
    assertFalse(wizard.canFinish());
  }

  @Test
  void aJointAsWideAsTheTileIsRefusedOnThePageOfTheTile() {
    show("work");
    Gestures.find(page("work").getControl(), Text.class, text -> text.getText().equals("1/8 in")).setText("6 in");
    String message = page("work").getErrorMessage();
    assertTrue(message != null && message.contains("as wide as the tile"), message);
    assertFalse(page("work").isPageComplete());
  }

  @Test
  void panelsThatOverlapAreFlagged() {
    show("panels");
    Gestures.find(page("panels").getControl(), Button.class, button -> button.getText().contains("Add")).notifyListeners(
        SWT.Selection, new Event());
    type("78 in", "10 in");
    await("the overlap is told", () -> String.valueOf(page("panels").getMessage()).contains("overlap"));
    assertTrue(wizard.canFinish());
  }

  private IWizardPage page(String name) {
    return wizard.getPage(name);
  }

  private void show(String name) {
    for (IWizardPage page : List.of(page("start"), page("work"), page("panels"))) {
      dialog.showPage(page);
      if (page.getName().equals(name)) {
        return;
      }
    }
  }

  private void type(String before, String after) {
    Text field = Gestures.find(page("panels").getControl(), Text.class, text -> text.getText().equals(before));
    field.setText(after);
  }
}
