// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.open;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import muralbench.app.internal.Problems;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.brief.BriefReader;
import muralbench.editor.MuralEditor;
import muralbench.editor.MuralEditorInput;
import muralbench.model.Mural;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

/** Opens murals in editors; what cannot be opened is told in a dialog and opens nothing. */
public final class MuralOpener {
  private static final Messages TEXTS = Messages.of(MuralOpener.class);
  private static final String BRIEF_ENDING = ".json";

  private final IWorkbenchPage page;

  /** An opener for a page. */
  public MuralOpener(IWorkbenchPage page) {
    this.page = page;
  }

  /** Opens a mural, or a brief as a new mural. */
  public void open(Path file) {
    try {
      MuralEditorInput input = input(file);
      show(input);
      RecentFiles.ofWorkbench().add(file);
    } catch (InputException | IOException | PartInitException | RuntimeException e) {
      if (!Files.exists(file)) {
        RecentFiles.ofWorkbench().remove(file);
      }
      Problems.show(page.getWorkbenchWindow().getShell(), TEXTS.text("open.failed", "file", file.getFileName()), e);
    }
  }

  private static MuralEditorInput input(Path file) throws InputException, IOException {
    if (file.toString().toLowerCase(Locale.ROOT).endsWith(BRIEF_ENDING)) {
      Mural mural = BriefReader.read(file);
      return MuralEditorInput.unsaved(mural, name(mural));
    }
    return MuralEditorInput.read(file);
  }

  /** Opens the demonstration mural as a new one. */
  public void openDemo() {
    try {
      Mural demo = BriefReader.demo();
      show(MuralEditorInput.example(demo, name(demo)));
    } catch (PartInitException | RuntimeException e) {
      Problems.show(page.getWorkbenchWindow().getShell(), TEXTS.text("open.demoFailed"), e);
    }
  }

  /** Opens a mural that has no file yet. */
  public void openNew(Mural mural) {
    try {
      show(MuralEditorInput.unsaved(mural, name(mural)));
    } catch (PartInitException e) {
      Problems.show(page.getWorkbenchWindow().getShell(), TEXTS.text("open.newFailed"), e);
    }
  }

  private void show(MuralEditorInput input) throws PartInitException {
    page.openEditor(input, MuralEditor.ID);
  }

  private static String name(Mural mural) {
    return mural.getTitle() == null || mural.getTitle().isBlank() ? TEXTS.text("open.untitled") : mural.getTitle();
  }
}
