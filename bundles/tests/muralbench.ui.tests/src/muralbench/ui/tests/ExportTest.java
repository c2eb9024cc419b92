// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import muralbench.app.internal.Composition;
import muralbench.app.internal.export.ExportOrder;
import muralbench.app.internal.export.ExportRun;
import muralbench.app.internal.export.ExportWizard;
import muralbench.base.InputException;
import muralbench.brief.BriefReader;
import muralbench.editor.MuralEditor;
import muralbench.export.Paper;
import muralbench.model.Mural;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportTest extends DesktopTest {
  @TempDir
  private Path temporary;

  @Test
  void theWizardWritesTheFilesIntoTheFolderThatWasNamed() throws Exception {
    Gestures.run("muralbench.app.openDemo");
    ExportWizard wizard = new ExportWizard(((MuralEditor) page().getActiveEditor()).openMural());
    WizardDialog dialog = new WizardDialog(page().getWorkbenchWindow().getShell(), wizard);
    dialog.setBlockOnOpen(false);
    dialog.open();
    Path folder = temporary.resolve("sheets");
    Gestures.find(wizard.getPage("documents").getControl(), Text.class, text -> true).setText(folder.toString());
    assertTrue(wizard.performFinish(), () -> wizard.getPage("documents").getErrorMessage());
    dialog.close();
    assertFalse(wizard.written().isEmpty());
    assertTrue(wizard.written().stream().allMatch(file -> file.startsWith(folder) && Files.isRegularFile(file)));
  }

  @Test
  void cancelledHalfWayNothingIsLeft() throws Exception {
    String second = Composition.exporters().all().get(1).label();
    NullProgressMonitor monitor = new NullProgressMonitor() {
      @Override
      public void setTaskName(String name) {
        setCanceled(isCanceled() || name.contains(second));
      }
    };
    ExportRun run = run(BriefReader.demo());
    assertThrows(InterruptedException.class, () -> run.run(monitor));
    assertTrue(monitor.isCanceled());
    assertEquals(List.of(), run.written());
    assertEquals(0, temporary.toFile().list().length);
  }

  @Test
  void aMuralThatCannotBeSetOutWritesNothingAndSaysWhy() {
    Mural mural = BriefReader.demo();
    mural.getTileKinds().forEach(kind -> kind.setWidth(-1));
    ExportRun run = run(mural);
    InvocationTargetException failure =
        assertThrows(InvocationTargetException.class, () -> run.run(new NullProgressMonitor()));
    assertTrue(failure.getCause() instanceof InputException);
    assertEquals(0, temporary.toFile().list().length);
  }

  private ExportRun run(Mural mural) {
    ExportOrder order = new ExportOrder(Composition.exporters().all(), Paper.A4, temporary.resolve("sheets"));
    return new ExportRun(mural, Composition.bonds(), order);
  }
}
