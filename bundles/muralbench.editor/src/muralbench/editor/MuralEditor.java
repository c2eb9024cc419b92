// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EventObject;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.editor.internal.MuralFileDialog;
import muralbench.editor.internal.RegisteredBonds;
import muralbench.editor.internal.palette.MuralPalette;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.palette.PaletteRoot;
import org.eclipse.gef.ui.parts.GraphicalEditorWithFlyoutPalette;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;

/** The editor of one mural: the wall with its panels, openings and pieces. */
public final class MuralEditor extends GraphicalEditorWithFlyoutPalette {
  /** Identifier of the editor in the workbench. */
  public static final String ID = "muralbench.editor.mural";

  private static final Messages TEXTS = Messages.of(MuralEditor.class);

  private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
    Thread thread = new Thread(task, "set-out");
    thread.setDaemon(true);
    return thread;
  });
  private OpenMural mural;

  /** The document this editor shows. */
  public OpenMural openMural() {
    return mural;
  }

  /**
   * Selects what a finding is about and brings it into view.
   *
   * @param place the id of a panel or opening, or the key of a piece
   * @return whether there is such a thing
   */
  public boolean reveal(String place) {
    return false;
  }

  @Override
  public void init(IEditorSite site, IEditorInput input) throws PartInitException {
    if (!(input instanceof MuralEditorInput muralInput)) {
      throw new PartInitException(TEXTS.text("open.foreign", "name", input.getName()));
    }
    try {
      Display display = site.getShell().getDisplay();
      mural = OpenMural.of(muralInput.takeMural(), muralInput.file().orElse(null), RegisteredBonds.current(), worker,
          display::asyncExec);
    } catch (InputException | IOException e) {
      throw new PartInitException(e.getMessage(), e);
    }
    setEditDomain(new DefaultEditDomain(this) {
      @Override
      public CommandStack getCommandStack() {
        return mural.commandStack();
      }
    });
    super.init(site, input);
    setPartName(input.getName());
  }

  @Override
  protected PaletteRoot getPaletteRoot() {
    return MuralPalette.create();
  }

  @Override
  public boolean isDirty() {
    return mural != null && mural.dirty();
  }

  @Override
  public void commandStackChanged(EventObject event) {
    firePropertyChange(PROP_DIRTY);
    super.commandStackChanged(event);
  }

  @Override
  public boolean isSaveAsAllowed() {
    return true;
  }

  @Override
  public void doSave(IProgressMonitor monitor) {
    Optional<Path> file = mural.file();
    if (file.isPresent()) {
      save(file.get());
    } else {
      doSaveAs();
    }
  }

  @Override
  public void doSaveAs() {
    MuralFileDialog.askWhereToSave(getSite().getShell(), mural, getEditorInput().getName()).ifPresent(this::save);
  }

  private void save(Path file) {
    try {
      mural.saveAs(file);
      setInput(MuralEditorInput.of(file));
      setPartName(getEditorInput().getName());
      firePropertyChange(PROP_INPUT);
      firePropertyChange(PROP_DIRTY);
    } catch (IOException e) {
      IStatus status = new Status(IStatus.ERROR, ID, e.getMessage(), e);
      ErrorDialog.openError(getSite().getShell(), TEXTS.text("save.title"),
          TEXTS.text("save.failed", "file", file.getFileName()), status);
    }
  }

  @Override
  @SuppressWarnings({"rawtypes", "unchecked"})
  public Object getAdapter(Class type) {
    return type == OpenMural.class ? mural : super.getAdapter(type);
  }

  @Override
  public void dispose() {
    worker.shutdownNow();
    super.dispose();
    if (mural != null) {
      mural.close();
    }
  }
}
