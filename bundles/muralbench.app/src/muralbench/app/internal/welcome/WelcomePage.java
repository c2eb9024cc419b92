// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.welcome;

import java.nio.file.Path;
import java.util.List;
import muralbench.app.internal.Pictures;
import muralbench.app.internal.open.MuralOpener;
import muralbench.app.internal.open.RecentFiles;
import muralbench.base.Messages;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.forms.events.IHyperlinkListener;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.ImageHyperlink;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.forms.widgets.Section;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.EditorPart;

/** Says what the program is for and offers the first steps. */
public final class WelcomePage extends EditorPart {
  /** Id of the editor. */
  public static final String ID = "muralbench.app.welcome";

  private static final Messages TEXTS = Messages.of(WelcomePage.class);
  private static final int TEXT_WIDTH = 520;

  private FormToolkit toolkit;
  private ScrolledForm form;
  private Composite recent;

  /** Opens the page, or brings it to the front. */
  public static void show(IWorkbenchPage page) {
    try {
      page.openEditor(new WelcomeInput(), ID);
    } catch (PartInitException e) {
      ILog.of(WelcomePage.class).error("The welcome page cannot be opened.", e);
    }
  }

  @Override
  public void init(IEditorSite site, IEditorInput input) {
    setSite(site);
    setInput(input);
    setPartName(input.getName());
    setTitleImage(Pictures.image("welcome"));
  }

  @Override
  public void createPartControl(Composite parent) {
    toolkit = new FormToolkit(parent.getDisplay());
    form = toolkit.createScrolledForm(parent);
    form.setText(TEXTS.text("welcome.title"));
    toolkit.decorateFormHeading(form.getForm());
    Composite body = form.getBody();
    GridLayoutFactory.swtDefaults().numColumns(2).equalWidth(true).margins(28, 20).spacing(36, 18).applyTo(body);
    Label intro = toolkit.createLabel(body, TEXTS.text("welcome.intro"), SWT.WRAP);
    GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(intro);
    Composite start = section(body, "welcome.start");
    command(start, "muralbench.app.openDemo", "muralbench16", "welcome.demo");
    command(start, "muralbench.app.new", "new", "welcome.new");
    command(start, "muralbench.app.open", "open", "welcome.open");
    recent = section(body, "welcome.recent");
    fillRecent();
    Composite steps = section(body, "welcome.steps");
    GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(steps.getParent());
    for (int step = 1; step <= 4; step++) {
      wrapped(steps, TEXTS.text("welcome.step" + step));
    }
  }

  private Composite section(Composite body, String title) {
    Section section = toolkit.createSection(body, Section.TITLE_BAR | Section.EXPANDED);
    section.setText(TEXTS.text(title));
    GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.BEGINNING).applyTo(section);
    Composite client = toolkit.createComposite(section);
    GridLayoutFactory.fillDefaults().margins(0, 8).spacing(0, 3).applyTo(client);
    section.setClient(client);
    return client;
  }

  private void command(Composite parent, String command, String picture, String key) {
    link(parent, TEXTS.text(key), picture, new HyperlinkAdapter() {
      @Override
      public void linkActivated(HyperlinkEvent event) {
        run(command);
      }
    });
    Label hint = wrapped(parent, TEXTS.text(key + ".hint"));
    GridDataFactory.createFrom((GridData) hint.getLayoutData()).indent(22, 0).applyTo(hint);
  }

  private void run(String command) {
    try {
      getSite().getService(IHandlerService.class).executeCommand(command, null);
    } catch (CommandException e) {
      ILog.of(WelcomePage.class).error("The command " + command + " cannot be run.", e);
    }
  }

  private ImageHyperlink link(Composite parent, String text, String picture, IHyperlinkListener listener) {
    ImageHyperlink link = toolkit.createImageHyperlink(parent, SWT.NONE);
    link.setText(text);
    link.setImage(Pictures.image(picture));
    link.addHyperlinkListener(listener);
    return link;
  }

  private Label wrapped(Composite parent, String text) {
    Label label = toolkit.createLabel(parent, text, SWT.WRAP);
    GridDataFactory.fillDefaults().grab(true, false).hint(TEXT_WIDTH / 2, SWT.DEFAULT).applyTo(label);
    return label;
  }

  private void fillRecent() {
    for (Control child : recent.getChildren()) {
      child.dispose();
    }
    List<Path> files = RecentFiles.ofWorkbench().files();
    for (Path file : files) {
      link(recent, file.getFileName().toString(), "muralbench16", new HyperlinkAdapter() {
        @Override
        public void linkActivated(HyperlinkEvent event) {
          new MuralOpener(getSite().getPage()).open(file);
        }
      }).setToolTipText(file.toString());
    }
    if (files.isEmpty()) {
      wrapped(recent, TEXTS.text("welcome.noRecent"));
    }
    form.reflow(true);
  }

  @Override
  public void setFocus() {
    fillRecent();
    form.setFocus();
  }

  @Override
  public void dispose() {
    if (toolkit != null) {
      toolkit.dispose();
    }
    super.dispose();
  }

  @Override
  public void doSave(IProgressMonitor monitor) {
    // Nothing to save.
  }

  @Override
  public void doSaveAs() {
    // Nothing to save.
  }

  @Override
  public boolean isDirty() {
    return false;
  }

  @Override
  public boolean isSaveAsAllowed() {
    return false;
  }
}
