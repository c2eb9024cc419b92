// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.export;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import muralbench.export.Exporter;
import muralbench.export.Paper;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The one page of the export wizard. */
final class DocumentsPage extends WizardPage {
  private static final Messages TEXTS = Messages.of(DocumentsPage.class);

  private static final int WIDTH = 600;
  private static final int HEIGHT = 230;

  private final List<Exporter> exporters;
  private final OpenMural mural;
  private final LastChoices last = LastChoices.ofWorkbench();
  private DocumentList documents;
  private Combo paper;
  private Text folder;
  private ExportOrder order;

  DocumentsPage(List<Exporter> exporters, OpenMural mural) {
    super("documents");
    this.exporters = exporters;
    this.mural = mural;
    setTitle(TEXTS.text("documents.title"));
    setDescription(TEXTS.text("documents.description"));
  }

  /** What was chosen when the page was last complete. */
  ExportOrder order() {
    return order;
  }

  void remember(ExportOrder chosen) {
    last.remember(chosen, exporters);
  }

  @Override
  public void createControl(Composite parent) {
    Composite body = new Composite(parent, SWT.NONE);
    GridLayoutFactory.swtDefaults().numColumns(3).margins(12, 12).spacing(8, 8).applyTo(body);
    documents = new DocumentList(body, exporters, last.unchecked(), this::refresh);
    GridDataFactory.fillDefaults().span(3, 1).grab(true, true).hint(WIDTH, HEIGHT).applyTo(documents.control());
    new Label(body, SWT.NONE).setText(TEXTS.text("documents.paper"));
    paper = new Combo(body, SWT.READ_ONLY);
    GridDataFactory.fillDefaults().span(2, 1).align(SWT.BEGINNING, SWT.CENTER).applyTo(paper);
    Arrays.stream(Paper.values()).forEach(size -> paper.add(TEXTS.text("paper." + size.word())));
    paper.select(last.paper(mural.units()).ordinal());
    new Label(body, SWT.NONE).setText(TEXTS.text("documents.folder"));
    folder = new Text(body, SWT.BORDER);
    GridDataFactory.fillDefaults().grab(true, false).hint(320, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(folder);
    folder.setText(last.folder(mural).toString());
    Button browse = new Button(body, SWT.PUSH);
    browse.setText(TEXTS.text("documents.browse"));
    setButtonLayoutData(browse);
    browse.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> browse()));
    paper.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> refresh()));
    folder.addModifyListener(event -> refresh());
    setControl(body);
    refresh();
  }

  private void browse() {
    DirectoryDialog dialog = new DirectoryDialog(getShell(), SWT.SAVE);
    dialog.setMessage(TEXTS.text("documents.chooseFolder"));
    dialog.setFilterPath(folder.getText());
    String chosen = dialog.open();
    if (chosen != null) {
      folder.setText(chosen);
    }
  }

  private void refresh() {
    if (getControl() == null) {
      return;
    }
    String problem = problem();
    setErrorMessage(problem);
    setPageComplete(problem == null);
    if (problem == null) {
      order = new ExportOrder(documents.chosen(), Paper.values()[paper.getSelectionIndex()], path());
    }
  }

  private String problem() {
    if (documents.chosen().isEmpty()) {
      return TEXTS.text("documents.noneChosen");
    }
    try {
      boolean usable = !folder.getText().isBlank() && (Files.isDirectory(path()) || Files.notExists(path()));
      return usable ? null : TEXTS.text("documents.noFolder");
    } catch (InvalidPathException e) {
      return TEXTS.text("documents.noFolder");
    }
  }

  private Path path() {
    return Path.of(folder.getText().strip()).toAbsolutePath().normalize();
  }
}
