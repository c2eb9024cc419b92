// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import muralbench.base.Messages;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** First page: where the mural comes from. */
final class StartPage extends WizardPage {
  /** Where a new mural comes from. */
  enum Source {
    MEASUREMENTS, BRIEF, DEMO
  }

  private static final Messages TEXTS = Messages.of(StartPage.class);
  private static final int INDENT = 24;

  private Source source = Source.MEASUREMENTS;
  private Text file;
  private Button browse;

  StartPage() {
    super("start");
    setTitle(TEXTS.text("start.title"));
    setDescription(TEXTS.text("start.description"));
  }

  Source source() {
    return source;
  }

  Path brief() {
    return Path.of(file.getText().strip()).toAbsolutePath();
  }

  @Override
  public void createControl(Composite parent) {
    Composite body = new Composite(parent, SWT.NONE);
    GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).spacing(8, 6).applyTo(body);
    choice(body, Source.MEASUREMENTS, "start.measurements").setSelection(true);
    choice(body, Source.BRIEF, "start.brief");
    file = new Text(body, SWT.BORDER);
    file.setMessage(TEXTS.text("start.file"));
    GridDataFactory.fillDefaults().grab(true, false).indent(INDENT, 0).align(SWT.FILL, SWT.CENTER).applyTo(file);
    file.addModifyListener(event -> refresh());
    browse = new Button(body, SWT.PUSH);
    browse.setText(TEXTS.text("start.browse"));
    browse.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> browse()));
    setButtonLayoutData(browse);
    choice(body, Source.DEMO, "start.demo");
    setControl(body);
    refresh();
  }

  private Button choice(Composite body, Source choice, String key) {
    Button button = new Button(body, SWT.RADIO);
    button.setText(TEXTS.text(key));
    GridDataFactory.fillDefaults().span(2, 1).indent(0, choice == Source.MEASUREMENTS ? 0 : 8).applyTo(button);
    button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
      if (button.getSelection()) {
        source = choice;
        refresh();
      }
    }));
    Label hint = new Label(body, SWT.WRAP);
    hint.setText(TEXTS.text(key + ".hint"));
    GridDataFactory.fillDefaults().span(2, 1).indent(INDENT, 0).grab(true, false).hint(420, SWT.DEFAULT).applyTo(hint);
    return button;
  }

  private void browse() {
    FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
    dialog.setFilterExtensions(new String[] {"*.json", "*"});
    dialog.setFilterNames(new String[] {TEXTS.text("start.briefs"), TEXTS.text("start.allFiles")});
    String chosen = dialog.open();
    if (chosen != null) {
      file.setText(chosen);
    }
  }

  private void refresh() {
    boolean brief = source == Source.BRIEF;
    file.setEnabled(brief);
    browse.setEnabled(brief);
    boolean typed = !file.getText().isBlank();
    setErrorMessage(brief && typed && !isFile() ? TEXTS.text("start.noFile", "file", file.getText()) : null);
    setPageComplete(!brief || typed && isFile());
    getContainer().updateButtons();
  }

  private boolean isFile() {
    try {
      return Files.isRegularFile(brief());
    } catch (InvalidPathException e) {
      return false;
    }
  }
}
