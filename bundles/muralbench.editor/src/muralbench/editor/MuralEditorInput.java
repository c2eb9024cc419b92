// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import muralbench.base.InputException;
import muralbench.editor.internal.MuralInputFactory;
import muralbench.model.Mural;
import muralbench.model.file.MuralFile;
import org.eclipse.core.runtime.PlatformObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableElement;

/**
 * What the editor opens: a file, or a mural that has none yet. Two inputs for one file are equal, so that the workbench
 * finds the editor that shows it already; an input with a file is restored at the next start.
 */
public final class MuralEditorInput extends PlatformObject implements IEditorInput, IPersistableElement {
  private final Path file;
  private final String name;
  private final boolean example;
  private Mural mural;

  private MuralEditorInput(Path file, String name, Mural mural, boolean example) {
    this.file = file;
    this.name = name;
    this.example = example;
    this.mural = mural;
  }

  /** A file that the editor will read when it opens. */
  public static MuralEditorInput of(Path file) {
    Path absolute = file.toAbsolutePath().normalize();
    return new MuralEditorInput(absolute, absolute.getFileName().toString(), null, false);
  }

  /**
   * A file, read now, so that the caller can tell what is wrong with it before an editor opens.
   *
   * @throws InputException if the file cannot be used
   * @throws IOException if the disk fails
   */
  public static MuralEditorInput read(Path file) throws InputException, IOException {
    MuralEditorInput input = of(file);
    input.mural = MuralFile.read(input.file);
    return input;
  }

  /** A new mural without a file; {@code name} is what the editor's tab says. */
  public static MuralEditorInput unsaved(Mural mural, String name) {
    return new MuralEditorInput(null, name, Objects.requireNonNull(mural, "mural"), false);
  }

  /** As {@link #unsaved}, for a mural that comes with the program: while it is untouched nobody is asked to save it. */
  public static MuralEditorInput example(Mural mural, String name) {
    return new MuralEditorInput(null, name, Objects.requireNonNull(mural, "mural"), true);
  }

  /** Whether the mural comes with the program. */
  boolean isExample() {
    return example;
  }

  /** The file; none for a new mural. */
  public Optional<Path> file() {
    return Optional.ofNullable(file);
  }

  /**
   * The mural, handed out once and read from the file if that was not done yet: two editors never share one.
   *
   * @throws InputException if the file cannot be used
   * @throws IOException if the disk fails
   */
  Mural takeMural() throws InputException, IOException {
    Mural taken = mural == null ? MuralFile.read(file) : mural;
    mural = file == null ? mural : null;
    return taken;
  }

  @Override
  public boolean exists() {
    return file != null && Files.exists(file);
  }

  @Override
  public ImageDescriptor getImageDescriptor() {
    return null;
  }

  @Override
  public String getName() {
    return name;
  }

  @Override
  public String getToolTipText() {
    return file == null ? name : file.toString();
  }

  @Override
  public IPersistableElement getPersistable() {
    return file == null ? null : this;
  }

  @Override
  public String getFactoryId() {
    return MuralInputFactory.ID;
  }

  @Override
  public void saveState(IMemento memento) {
    MuralInputFactory.save(memento, file);
  }

  @Override
  public boolean equals(Object other) {
    return this == other || file != null && other instanceof MuralEditorInput input && file.equals(input.file);
  }

  @Override
  public int hashCode() {
    return file == null ? System.identityHashCode(this) : file.hashCode();
  }
}
