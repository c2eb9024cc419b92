// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import java.nio.file.Path;
import java.util.Optional;
import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** Asks for the file a mural is saved to. */
public final class MuralFileDialog {
  private static final Messages TEXTS = Messages.of(MuralFileDialog.class);
  private static final String ENDING = ".mural";

  private MuralFileDialog() {}

  /** The file chosen, with its ending; none if the person gave up. Asks before an existing file is chosen. */
  public static Optional<Path> askWhereToSave(Shell shell, OpenMural mural, String name) {
    FileDialog dialog = new FileDialog(shell, SWT.SAVE);
    dialog.setText(TEXTS.text("saveAs.title"));
    dialog.setFilterExtensions(new String[] {"*" + ENDING});
    dialog.setFilterNames(new String[] {TEXTS.text("saveAs.filter")});
    dialog.setOverwrite(true);
    mural.file().ifPresent(file -> dialog.setFilterPath(file.getParent().toString()));
    dialog.setFileName(withEnding(name));
    return Optional.ofNullable(dialog.open()).map(MuralFileDialog::withEnding).map(Path::of);
  }

  static String withEnding(String name) {
    return name.endsWith(ENDING) ? name : name + ENDING;
  }
}
