// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import java.io.IOException;
import muralbench.app.internal.Pictures;
import muralbench.app.internal.Problems;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.brief.BriefReader;
import muralbench.model.Mural;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.Wizard;

/** Makes a new mural from measurements, from a brief or from the demonstration; the caller opens what was made. */
public final class NewMuralWizard extends Wizard {
  private static final Messages TEXTS = Messages.of(NewMuralWizard.class);

  private final StartPage start = new StartPage();
  private final WorkPage work = new WorkPage();
  private final PanelsPage panels = new PanelsPage(work);
  private Mural made;

  /** A fresh wizard. */
  public NewMuralWizard() {
    setWindowTitle(TEXTS.text("wizard.title"));
    setDefaultPageImageDescriptor(Pictures.descriptor("banner"));
  }

  /** The mural that was made, or null if the wizard was cancelled. */
  public Mural made() {
    return made;
  }

  /** Whether the person wants the demonstration mural. */
  boolean isDemo() {
    return start.source() == StartPage.Source.DEMO;
  }

  @Override
  public void addPages() {
    addPage(start);
    addPage(work);
    addPage(panels);
  }

  @Override
  public IWizardPage getNextPage(IWizardPage page) {
    return page == start && start.source() != StartPage.Source.MEASUREMENTS ? null : super.getNextPage(page);
  }

  @Override
  public boolean canFinish() {
    return start.source() == StartPage.Source.MEASUREMENTS
        ? panels.wasShown() && work.isPageComplete() && panels.isPageComplete()
        : start.isPageComplete();
  }

  @Override
  public boolean performFinish() {
    try {
      made = make();
      return true;
    } catch (InputException | IOException | RuntimeException e) {
      start.setErrorMessage(Problems.words(e));
      getContainer().showPage(start);
      return false;
    }
  }

  private Mural make() throws InputException, IOException {
    return switch (start.source()) {
      case MEASUREMENTS -> panels.draft().orElseThrow().toMural();
      case BRIEF -> BriefReader.read(start.brief());
      case DEMO -> BriefReader.demo();
    };
  }
}
