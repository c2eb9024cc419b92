// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import muralbench.app.internal.panel.BondDialog;
import muralbench.app.internal.panel.FitDialog;
import muralbench.app.internal.panel.PanelChange;
import muralbench.base.Progress;
import muralbench.model.BalancedOrigin;
import muralbench.model.Panel;
import muralbench.setout.BondSpec;
import muralbench.setout.MuralReader;
import muralbench.setout.fit.Alternative;
import muralbench.setout.fit.Alternative.Kind;
import muralbench.setout.fit.FitAlternatives;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PanelDialogsTest extends DesktopTest {
  @TempDir
  private Path folder;
  private Wall wall;
  private Dialog dialog;

  @BeforeEach
  void openTheWall() throws Exception {
    wall = Wall.open(SampleWall.create(), folder.resolve("wall.mural"));
  }

  @AfterEach
  void closeTheDialog() {
    if (dialog != null) {
      dialog.close();
    }
  }

  @Test
  void thePanelMenuAndTheMenuOfTheWallOfferBoth() {
    List<String> bar = Gestures.menuTexts("Panel").stream().map(PanelDialogsTest::plain).toList();
    assertTrue(bar.containsAll(List.of("Compare Fits...", "Bond...")), bar.toString());
    wall.viewer().getContextMenu().createContextMenu(wall.canvas()).notifyListeners(SWT.Show, new Event());
    List<String> popup = Arrays.stream(wall.viewer().getContextMenu().getMenu().getItems()).map(MenuItem::getText)
        .map(PanelDialogsTest::plain).toList();
    assertTrue(popup.containsAll(List.of("Compare Fits...", "Bond...")), popup.toString());
  }

  @Test
  void theCommandShowsTheChoicesForTheSelectedPanel() {
    wall.editor().reveal("A");
    String told = Gestures.dialogText("Compare Fits", () -> Gestures.run("muralbench.app.fit"));
    assertTrue(told.contains("Ways to set out panel A"), told);
    assertTrue(told.contains("Tiles to order"), told);
  }

  @Test
  void withoutASelectionItAsksForOne() {
    assertTrue(Gestures.dialogText("Panel", () -> Gestures.run("muralbench.app.bond")).contains("Select a panel"));
  }

  @Test
  void theBestChoiceIsChosenAtFirstAndThePresentCannotBeApplied() throws Exception {
    List<Alternative> ranked = ranked();
    FitDialog fit = show(new FitDialog(shell(), wall.mural().units(), ranked));
    assertEquals(Kind.PRESENT, fit.shown().get(0).kind());
    assertEquals(ranked.get(0), fit.chosen());
    fit.choose(fit.shown().get(0));
    assertFalse(ok(fit).isEnabled());
    fit.choose(fit.shown().get(1));
    assertTrue(ok(fit).isEnabled());
  }

  @Test
  void theBestThreeStandBesideThePresentUntilMoreIsAskedFor() throws Exception {
    List<Alternative> ranked = ranked();
    FitDialog fit = show(new FitDialog(shell(), wall.mural().units(), ranked));
    assertEquals(FitAlternatives.shortlist(ranked, 3), fit.shown().subList(1, 4));
    assertEquals(4, fit.shown().size());
    Button more = Gestures.find(fit.getShell(), Button.class, button -> button.getText().contains("More"));
    more.notifyListeners(SWT.Selection, new Event());
    assertTrue(fit.shown().size() > 4 && !more.isEnabled());
  }

  @Test
  void aChoiceIsAppliedAndUndoneInOneStep() throws Exception {
    Alternative size = ranked().stream().filter(one -> one.kind() == Kind.SIZE).findFirst().orElseThrow();
    Panel before = EcoreUtil.copy(wall.panel(0));
    wall.mural().execute(PanelChange.to(wall.mural().mural(), wall.panel(0), size));
    assertEquals(size.spec().outline().box().width(), Wall.rectangle(wall.panel(0)).getWidth());
    assertFalse(EcoreUtil.equals(before, wall.panel(0)));
    wall.mural().commandStack().undo();
    assertTrue(EcoreUtil.equals(before, wall.panel(0)));
    assertFalse(wall.mural().commandStack().canUndo());
  }

  @Test
  void everyChoiceComesOutOnTheWallAsItWasShown() throws Exception {
    for (Alternative one : ranked()) {
      wall.mural().execute(PanelChange.to(wall.mural().mural(), wall.panel(0), one));
      await("the set-out", () -> !wall.mural().busy());
      assertEquals(one.cuts(), wall.mural().setOut(wall.panel(0)).orElseThrow().cut(), one.title() + one.change());
      wall.mural().commandStack().undo();
    }
    assertTrue(wall.panel(0).getOrigin() instanceof BalancedOrigin);
  }

  @Test
  void theBondDialogListsEveryBondWithAPicture() throws Exception {
    BondDialog bond = bondDialog();
    Table table = Gestures.find(bond.getShell(), Table.class, any -> true);
    assertEquals(wall.mural().bonds().all().size(), table.getItemCount());
    Arrays.stream(table.getItems()).forEach(item -> assertNotNull(item.getImage(), item.getText()));
  }

  @Test
  void aBadSettingIsToldAndCannotBeApplied() throws Exception {
    BondDialog bond = bondDialog();
    bond.select(wall.mural().bonds().find("diagonal").orElseThrow());
    await("the preview", () -> bond.chosen() != null && ok(bond).isEnabled());
    Gestures.find(bond.getShell(), Text.class, text -> text.getMessage().equals("45")).setText("120");
    await("the refusal", () -> bond.getErrorMessage() != null);
    assertTrue(bond.getErrorMessage().contains("120"), bond.getErrorMessage());
    assertFalse(ok(bond).isEnabled());
  }

  @Test
  void ringsBeginWithTheLargestFaceAndBareNumbersAreInTheUnitsOfTheMural() throws Exception {
    BondDialog bond = bondDialog();
    bond.select(wall.mural().bonds().find("rings").orElseThrow());
    await("the preview", () -> bond.chosen() != null);
    assertEquals("24 in", bond.chosen().settings().get("radius"));
    Gestures.find(bond.getShell(), Text.class, text -> text.getText().equals("24 in")).setText("23");
    await("the preview", () -> bond.chosen() != null);
    assertEquals("23 in", bond.chosen().settings().get("radius"));
  }

  @Test
  void aRowOfATableIsRemovedAndTheHoleToldAtOnce() throws Exception {
    BondDialog bond = bondDialog();
    bond.select(wall.mural().bonds().find("three-size").orElseThrow());
    await("the preview", () -> bond.chosen() != null);
    assertEquals(Map.of(), bond.chosen().settings());
    Gestures.find(bond.getShell(), Button.class, button -> plain(button.getText()).equals("Remove"))
        .notifyListeners(SWT.Selection, new Event());
    await("the refusal", () -> bond.getErrorMessage() != null);
    assertTrue(bond.getErrorMessage().contains("cover 5 of the 9 squares"), bond.getErrorMessage());
  }

  @Test
  void theChosenBondIsAppliedAndUndoneInOneStep() throws Exception {
    BondDialog bond = bondDialog();
    bond.select(wall.mural().bonds().find("running").orElseThrow());
    await("the preview", () -> bond.chosen() != null);
    assertEquals(new BondSpec("running", 0.5, 0, Map.of()), bond.chosen());
    wall.mural().execute(PanelChange.bond(wall.mural().mural(), wall.panel(0), bond.chosen()));
    assertEquals("running", wall.panel(0).getBond().getKind());
    wall.mural().commandStack().undo();
    assertEquals("grid", wall.panel(0).getBond().getKind());
  }

  private List<Alternative> ranked() throws Exception {
    return FitAlternatives.of(MuralReader.panel(wall.panel(0)), wall.mural().bonds(), wall.mural().units(),
        Progress.NONE);
  }

  private BondDialog bondDialog() throws Exception {
    return show(new BondDialog(shell(), MuralReader.panel(wall.panel(0)), wall.mural().bonds(), wall.mural().units()));
  }

  private <D extends Dialog> D show(D made) {
    dialog = made;
    made.setBlockOnOpen(false);
    made.open();
    settle();
    return made;
  }

  private static Shell shell() {
    return page().getWorkbenchWindow().getShell();
  }

  private static Button ok(Dialog dialog) {
    return Gestures.find(dialog.getShell(), Button.class, button -> "Apply".equals(button.getText()));
  }

  private static String plain(String text) {
    return text.replace("&", "").replaceFirst("\t.*", "");
  }
}
