// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import muralbench.app.internal.panel.PanelChange;
import muralbench.app.internal.survey.MeasuredWallWizard;
import muralbench.editor.NewPanel;
import muralbench.model.LevelLineOutline;
import muralbench.model.MeasuredOutline;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Site measurements: a wall of 3 m by 4 m has diagonals of 5 m (Pythagoras). */
class MeasuredWallTest extends DesktopTest {
  private static final String[] TRUE_WALL = {"4000 mm", "3000 mm", "4000 mm", "3000 mm", "5000 mm", "5000 mm"};

  @TempDir
  private Path folder;
  private Wall wall;
  private MeasuredWallWizard wizard;
  private WizardDialog dialog;

  @BeforeEach
  void openTheWall() throws Exception {
    wall = Wall.open(SampleWall.create(), folder.resolve("wall.mural"));
    open(MeasuredWallWizard.forNewPanel(wall.mural()));
  }

  @AfterEach
  void close() {
    dialog.close();
  }

  @Test
  void itAsksForWhatIsStillToMeasure() {
    assertFalse(wizard.canFinish());
    type("4000 mm", "3000 mm", "4000 mm", "3000 mm", "5000 mm");
    assertEquals("Still to measure: falling diagonal.", shown().getMessage());
    assertFalse(wizard.canFinish());
  }

  @Test
  void aTrueWallFitsAndIsTrue() {
    type(TRUE_WALL);
    assertTrue(wizard.canFinish());
    assertEquals(6, labels().stream().filter("fits"::equals).count());
    assertEquals(4, labels().stream().filter("square"::equals).count());
  }

  @Test
  void aWrongDiagonalIsToldInWords() {
    type("4000 mm", "3000 mm", "4000 mm", "3000 mm", "5000 mm", "5050 mm");
    assertTrue(shown().getMessage().contains("cannot be right"), shown().getMessage());
    assertEquals(IMessageProvider.WARNING, ((IMessageProvider) shown()).getMessageType());
    assertTrue(labels().stream().anyMatch(words -> words.contains("too long: over the limit")), labels().toString());
  }

  @Test
  void aDiagonalThatClosesNoTriangleIsRefusedWithARemedy() {
    type("4000 mm", "3000 mm", "4000 mm", "3000 mm", "8000 mm", "5000 mm");
    assertTrue(shown().getErrorMessage().contains("Measure it again"), shown().getErrorMessage());
    assertFalse(wizard.canFinish());
  }

  @Test
  void thePanelIsAddedAndUndoneInOneStep() {
    type(TRUE_WALL);
    NewPanel added = NewPanel.of(wall.mural().mural(), wizard.outline());
    wall.mural().execute(added.command());
    assertEquals(3, wall.mural().mural().getPanels().size());
    assertEquals(4000, ((MeasuredOutline) added.panel().getOutline()).getBottom(), 1e-9);
    assertTrue(wall.mural().problem(added.panel()).isEmpty());
    wall.mural().commandStack().undo();
    assertEquals(2, wall.mural().mural().getPanels().size());
  }

  @Test
  void aPanelIsMeasuredFromALevelLineWithAStationBetween() {
    dialog.close();
    open(MeasuredWallWizard.forPanel(wall.mural(), wall.panel(0)));
    press("level line");
    press("Add Station");
    type("30 in", "25 in");
    assertTrue(labels().stream().anyMatch(words -> words.contains("lower at station 2")), labels().toString());
    wall.mural().execute(PanelChange.measured(wall.mural().mural(), wall.panel(0), wizard.outline()));
    assertEquals(3, ((LevelLineOutline) wall.panel(0).getOutline()).getStations().size());
    wall.mural().commandStack().undo();
    assertEquals(1828.8, Wall.rectangle(wall.panel(0)).getWidth(), 1e-9);
  }

  private void open(MeasuredWallWizard made) {
    wizard = made;
    dialog = new WizardDialog(page().getWorkbenchWindow().getShell(), made);
    dialog.setBlockOnOpen(false);
    dialog.open();
    settle();
  }

  private IWizardPage shown() {
    return dialog.getCurrentPage();
  }

  private void type(String... lengths) {
    List<Text> fields = new ArrayList<>();
    collect(shown().getControl(), Text.class, fields);
    for (int i = 0; i < lengths.length; i++) {
      fields.get(i).setText(lengths[i]);
    }
  }

  private List<String> labels() {
    List<Label> found = new ArrayList<>();
    collect(shown().getControl(), Label.class, found);
    return found.stream().map(Label::getText).toList();
  }

  private void press(String words) {
    Button button = Gestures.find(shown().getControl(), Button.class,
        one -> one.getText().replace("&", "").contains(words));
    if ((button.getStyle() & SWT.RADIO) != 0) {
      Arrays.stream(button.getParent().getChildren()).filter(Button.class::isInstance)
          .forEach(other -> ((Button) other).setSelection(other == button));
    }
    button.notifyListeners(SWT.Selection, new Event());
  }

  private static <T extends Control> void collect(Control root, Class<T> kind, List<T> found) {
    if (kind.isInstance(root) && root.isVisible()) {
      found.add(kind.cast(root));
    }
    if (root instanceof Composite composite) {
      Arrays.stream(composite.getChildren()).forEach(child -> collect(child, kind, found));
    }
  }
}
