// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.export;

import java.nio.file.Path;
import java.util.List;
import muralbench.base.Messages;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Says where the files are; a double click opens one. */
final class WrittenDialog extends MessageDialog {
  private static final Messages TEXTS = Messages.of(WrittenDialog.class);

  private final Path folder;
  private final List<Path> files;

  WrittenDialog(Shell parent, Path folder, List<Path> files) {
    super(parent, TEXTS.text("written.title"), null,
        TEXTS.text("written.message", "count", files.size(), "folder", folder), INFORMATION,
        new String[] {TEXTS.text("written.open"), IDialogConstants.CLOSE_LABEL}, 1);
    this.folder = folder;
    this.files = files;
    setShellStyle(getShellStyle() | SWT.RESIZE);
  }

  @Override
  protected Control createCustomArea(Composite parent) {
    Table table = new Table(parent, SWT.BORDER | SWT.SINGLE | SWT.V_SCROLL);
    GridDataFactory.fillDefaults().grab(true, true).hint(480, 160).applyTo(table);
    for (Path file : files) {
      new TableItem(table, SWT.NONE).setText(folder.relativize(file).toString());
    }
    table.addListener(SWT.DefaultSelection, event -> open(files.get(table.getSelectionIndex())));
    return table;
  }

  @Override
  protected void buttonPressed(int button) {
    if (button == 0) {
      open(folder);
    } else {
      super.buttonPressed(button);
    }
  }

  private void open(Path path) {
    if (!Program.launch(path.toString())) {
      MessageDialog.openInformation(getShell(), TEXTS.text("written.title"),
          TEXTS.text("written.noProgram", "path", path));
    }
  }
}
