// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import muralbench.app.internal.findings.FindingsView;
import muralbench.base.Finding;
import muralbench.editor.ModelCommand;
import muralbench.editor.MuralEditor;
import muralbench.editor.OpenMural;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DemoTest extends DesktopTest {
  private OpenMural mural;

  @BeforeEach
  void openTheDemo() {
    Gestures.run("muralbench.app.openDemo");
    mural = ((MuralEditor) page().getActiveEditor()).openMural();
    await("the demo is set out", () -> !mural.busy());
  }

  @Test
  void everyPanelOfTheDemoIsSetOut() {
    assertEquals(mural.mural().getPanels().size(), mural.setOut().panels().size());
    assertTrue(mural.setOut().pieces() > 0);
  }

  @Test
  void anUntouchedDemoNeedsNoSaving() {
    assertFalse(page().getActiveEditor().isDirty());
    mural.execute(ModelCommand.of("Title", mural.mural(), () -> mural.mural().setTitle("Ebb")));
    assertTrue(page().getActiveEditor().isDirty());
  }

  @Test
  void theFindingsViewListsWhatTheChecksFound() throws Exception {
    Table table = findings();
    await("all findings are listed", () -> table.getItemCount() == mural.findings().size());
    assertFalse(mural.findings().isEmpty());
    List<String> listed = Arrays.stream(table.getItems()).map(item -> item.getText(2)).sorted().toList();
    assertEquals(mural.findings().stream().map(Finding::message).sorted().toList(), listed);
  }

  @Test
  void aViewOpenedLaterListsTheFindingsAtOnce() throws Exception {
    page().hideView(view());
    assertEquals(mural.findings().size(), findings().getItemCount());
  }

  @Test
  void theChosenFindingIsGivenWholeBelowTheTable() throws Exception {
    Table table = findings();
    table.setSelection(0);
    table.notifyListeners(SWT.Selection, new Event());
    Finding finding = (Finding) table.getItem(0).getData();
    Control inside = table.getParent().getParent();
    Gestures.find(inside, Label.class, label -> label.isVisible() && label.getText().contains(finding.remedy()));
  }

  @Test
  void theFilterHidesOneGradeAndBringsItBack() throws Exception {
    Table table = findings();
    await("all findings are listed", () -> table.getItemCount() == mural.findings().size());
    String warning = "Warning";
    toggle(warning);
    assertTrue(Arrays.stream(table.getItems()).map(TableItem::getText).noneMatch(warning::equals));
    toggle(warning);
    assertEquals(mural.findings().size(), table.getItemCount());
  }

  @Test
  void theFindingsOfAClosedMuralGo() throws Exception {
    Table table = findings();
    page().closeAllEditors(false);
    await("no finding is left", () -> table.getItemCount() == 0);
  }

  private static IViewPart view() throws Exception {
    return page().showView(FindingsView.ID);
  }

  private static Table findings() throws Exception {
    view();
    return Gestures.find(page().getWorkbenchWindow().getShell(), Table.class,
        table -> table.getColumnCount() > 0 && table.getColumn(0).getText().equals("Grade"));
  }

  private static void toggle(String name) throws Exception {
    IAction action = Stream.of(view().getViewSite().getActionBars().getToolBarManager().getItems())
        .map(item -> ((ActionContributionItem) item).getAction()).filter(each -> name.equals(each.getText()))
        .findFirst().orElseThrow();
    action.setChecked(!action.isChecked());
    action.run();
  }
}
