// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import muralbench.editor.MuralEditorInput;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.IMemento;

/** Lets the workbench remember open files from one start to the next. */
public final class MuralInputFactory implements IElementFactory {
  /** Identifier in plugin.xml. */
  public static final String ID = "muralbench.editor.inputFactory";

  private static final String FILE = "file";

  /** Writes what {@link #createElement} reads. */
  public static void save(IMemento memento, Path file) {
    memento.putString(FILE, file.toString());
  }

  @Override
  public IAdaptable createElement(IMemento memento) {
    String file = memento.getString(FILE);
    return file != null && Files.isRegularFile(Path.of(file)) ? MuralEditorInput.of(Path.of(file)) : null;
  }
}
