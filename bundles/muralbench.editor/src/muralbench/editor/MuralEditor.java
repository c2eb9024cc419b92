// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.EventObject;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.editor.internal.MuralFileDialog;
import muralbench.editor.internal.RegisteredBonds;
import muralbench.editor.internal.SavePrompt;
import muralbench.editor.internal.WallMenu;
import muralbench.editor.internal.WallView;
import muralbench.editor.internal.outline.MuralOutlinePage;
import muralbench.editor.internal.palette.FlyoutSettings;
import muralbench.editor.internal.palette.MuralPalette;
import muralbench.editor.internal.properties.MuralPropertiesPage;
import muralbench.editor.internal.rulers.RuledWall;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.KeyHandler;
import org.eclipse.gef.KeyStroke;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.gef.palette.PaletteRoot;
import org.eclipse.gef.ui.palette.FlyoutPaletteComposite.FlyoutPreferences;
import org.eclipse.gef.ui.parts.GraphicalEditorWithFlyoutPalette;
import org.eclipse.gef.ui.parts.ScrollingGraphicalViewer;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.ISaveablePart2;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;
import org.eclipse.ui.views.properties.IPropertySheetPage;

/** The editor of one mural: the wall with its panels, openings and pieces. */
public final class MuralEditor extends GraphicalEditorWithFlyoutPalette implements ISaveablePart2 {
  /** Identifier of the editor in the workbench. */
  public static final String ID = "muralbench.editor.mural";

  private static final Messages TEXTS = Messages.of(MuralEditor.class);

  private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
    Thread thread = new Thread(task, "set-out");
    thread.setDaemon(true);
    return thread;
  });
  private OpenMural mural;
  private RuledWall ruled;
  private WallView wall;

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
    return wall.reveal(place, List.of());
  }

  /** As {@link #reveal(String)}; pieces of a panel that are given by their keys are marked until the next selection. */
  public boolean reveal(String place, Collection<?> keys) {
    return wall.reveal(place, keys);
  }

  @Override
  public void init(IEditorSite site, IEditorInput input) throws PartInitException {
    if (!(input instanceof MuralEditorInput muralInput)) {
      throw new PartInitException(TEXTS.text("open.foreign", "name", input.getName()));
    }
    try {
      Display display = site.getShell().getDisplay();
      mural = OpenMural.of(muralInput.takeMural(), muralInput.file().orElse(null), RegisteredBonds.current(), worker,
          task -> onDisplay(display, task));
      if (muralInput.isExample()) {
        mural.keptElsewhere();
      }
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

  private static void onDisplay(Display display, Runnable task) {
    if (!display.isDisposed()) {
      display.asyncExec(task);
    }
  }

  @Override
  protected PaletteRoot getPaletteRoot() {
    return MuralPalette.create();
  }

  @Override
  protected FlyoutPreferences getPalettePreferences() {
    return new FlyoutSettings();
  }

  @Override
  protected void createGraphicalViewer(Composite parent) {
    ruled = new RuledWall(parent);
    ScrollingGraphicalViewer viewer = new ScrollingGraphicalViewer();
    viewer.createControl(ruled.frame());
    setGraphicalViewer(viewer);
    configureGraphicalViewer();
    hookGraphicalViewer();
    initializeGraphicalViewer();
  }

  @Override
  protected Control getGraphicalControl() {
    return ruled.frame();
  }

  @Override
  protected void configureGraphicalViewer() {
    super.configureGraphicalViewer();
    wall = new WallView(getGraphicalViewer(), mural, this::showStatus);
    KeyHandler keys = new KeyHandler();
    keys.put(KeyStroke.getPressed(SWT.DEL, SWT.DEL, 0), getActionRegistry().getAction(ActionFactory.DELETE.getId()));
    getGraphicalViewer().setKeyHandler(getGraphicalViewer().getKeyHandler().setParent(keys));
    WallMenu menu = new WallMenu(getGraphicalViewer(), getActionRegistry(), wall.scene());
    getGraphicalViewer().setContextMenu(menu);
    getSite().registerContextMenu(WallMenu.ID, menu, getGraphicalViewer());
  }

  @Override
  protected void initializeGraphicalViewer() {
    super.initializeGraphicalViewer();
    wall.show();
    ruled.rule((FigureCanvas) getGraphicalViewer().getControl(), wall.scene());
  }

  private void showStatus(String words) {
    getEditorSite().getActionBars().getStatusLineManager().setMessage(words.isEmpty() ? null : words);
  }

  @Override
  public boolean isDirty() {
    return mural != null && mural.dirty();
  }

  @Override
  public void commandStackChanged(EventObject event) {
    firePropertyChange(IEditorPart.PROP_DIRTY);
    super.commandStackChanged(event);
  }

  @Override
  public boolean isSaveAsAllowed() {
    return true;
  }

  @Override
  public int promptToSaveOnClose() {
    return SavePrompt.ask(getSite().getShell(), getPartName());
  }

  /** Saves; cancels the monitor if that failed or the person gave up, so that nothing is closed unsaved. */
  @Override
  public void doSave(IProgressMonitor monitor) {
    if (!mural.file().or(this::askWhere).map(this::save).orElse(false)) {
      monitor.setCanceled(true);
    }
  }

  @Override
  public void doSaveAs() {
    askWhere().ifPresent(this::save);
  }

  private Optional<Path> askWhere() {
    return MuralFileDialog.askWhereToSave(getSite().getShell(), mural, getEditorInput().getName());
  }

  private boolean save(Path file) {
    try {
      mural.saveAs(file);
    } catch (IOException e) {
      MessageDialog.openError(getSite().getShell(), TEXTS.text("save.title"),
          TEXTS.text("save.failed", "file", file.getFileName(), "reason", e.getMessage()));
      return false;
    }
    setInput(MuralEditorInput.of(file));
    setPartName(getEditorInput().getName());
    firePropertyChange(PROP_INPUT);
    firePropertyChange(IEditorPart.PROP_DIRTY);
    return true;
  }

  @Override
  @SuppressWarnings({"rawtypes", "unchecked"})
  public Object getAdapter(Class type) {
    if (type == OpenMural.class) {
      return mural;
    }
    if (type == ZoomManager.class) {
      return wall == null ? null : wall.scene().zoom();
    }
    if (type == IContentOutlinePage.class && wall != null) {
      return new MuralOutlinePage(wall.scene(), getEditDomain(), getSelectionSynchronizer(), getActionRegistry());
    }
    return type == IPropertySheetPage.class ? new MuralPropertiesPage(mural, getActionRegistry()) : super.getAdapter(type);
  }

  @Override
  public void dispose() {
    worker.shutdownNow();
    if (mural != null) {
      // Where the file could not be read there is nothing that the framework could dispose of.
      super.dispose();
      mural.close();
    }
  }
}
