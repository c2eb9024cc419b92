// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.export;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import muralbench.app.internal.Composition;
import muralbench.app.internal.Pictures;
import muralbench.app.internal.Problems;
import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import org.eclipse.jface.wizard.Wizard;

/** Chooses documents, paper and folder, and writes them with progress and a cancel button. */
public final class ExportWizard extends Wizard {
  private static final Messages TEXTS = Messages.of(ExportWizard.class);

  private final OpenMural mural;
  private final DocumentsPage page;
  private List<Path> written = List.of();

  /** A wizard for a mural. */
  public ExportWizard(OpenMural mural) {
    this.mural = mural;
    this.page = new DocumentsPage(Composition.exporters().all(), mural);
    setWindowTitle(TEXTS.text("wizard.title"));
    setDefaultPageImageDescriptor(Pictures.descriptor("banner"));
    setNeedsProgressMonitor(true);
  }

  @Override
  public void addPages() {
    addPage(page);
  }

  /** The folder the files went to. */
  public Path folder() {
    return page.order().folder();
  }

  /** The files that were written. */
  public List<Path> written() {
    return written;
  }

  @Override
  public boolean performFinish() {
    ExportOrder order = page.order();
    ExportRun run = new ExportRun(mural.mural(), mural.bonds(), order);
    try {
      getContainer().run(true, true, run);
      written = run.written();
      page.remember(order);
      return true;
    } catch (InterruptedException cancelled) {
      page.setErrorMessage(null);
      page.setMessage(TEXTS.text("wizard.cancelled"));
    } catch (InvocationTargetException e) {
      page.setErrorMessage(TEXTS.text("wizard.failed", "problem", Problems.words(e.getCause())));
    }
    return false;
  }
}
