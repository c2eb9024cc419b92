// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.outline;

import java.util.HashMap;
import java.util.Map;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.Icons;
import muralbench.editor.internal.parts.Scene;
import org.eclipse.gef.EditDomain;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.gef.ui.parts.ContentOutlinePage;
import org.eclipse.gef.ui.parts.SelectionSynchronizer;
import org.eclipse.gef.ui.parts.TreeViewer;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.IPageSite;

/** The tree of the mural above the small picture of the wall. */
public final class MuralOutlinePage extends ContentOutlinePage implements OpenMural.Listener {
  private final Scene scene;
  private final EditDomain domain;
  private final SelectionSynchronizer selection;
  private final ActionRegistry actions;
  private SashForm sash;
  private Thumbnail thumbnail;

  /** A page for an editor with its selection and actions. */
  public MuralOutlinePage(Scene scene, EditDomain domain, SelectionSynchronizer selection, ActionRegistry actions) {
    super(new TreeViewer());
    this.scene = scene;
    this.domain = domain;
    this.selection = selection;
    this.actions = actions;
  }

  @Override
  public void init(IPageSite site) {
    super.init(site);
    IActionBars bars = site.getActionBars();
    for (ActionFactory action : new ActionFactory[] {ActionFactory.UNDO, ActionFactory.REDO, ActionFactory.DELETE}) {
      bars.setGlobalActionHandler(action.getId(), actions.getAction(action.getId()));
    }
    bars.updateActionBars();
  }

  @Override
  public void createControl(Composite parent) {
    sash = new SashForm(parent, SWT.VERTICAL);
    getViewer().createControl(sash);
    Map<String, Image> images = images();
    getViewer().setEditDomain(domain);
    getViewer().setEditPartFactory((context, model) -> new TreePart(scene.mural(), images, model));
    getViewer().setContextMenu(new TreeMenu(getViewer(), scene.mural(), actions));
    selection.addViewer(getViewer());
    getViewer().setContents(TreePart.TOP);
    for (TreeItem item : ((Tree) getViewer().getControl()).getItems()) {
      item.setExpanded(true);
    }
    thumbnail = new Thumbnail(sash, scene);
    sash.setWeights(3, 2);
    scene.mural().addListener(this);
  }

  private Map<String, Image> images() {
    LocalResourceManager resources = new LocalResourceManager(JFaceResources.getResources(), sash);
    Map<String, Image> images = new HashMap<>();
    for (String name : new String[] {"mural", "panel", "outlet", "window", "round", "tile"}) {
      images.put(name, resources.create(Icons.small(name)));
    }
    return images;
  }

  @Override
  public void modelChanged(OpenMural mural) {
    ((TreePart) getViewer().getContents()).refreshAll();
    thumbnail.redraw();
  }

  @Override
  public void setOutChanged(OpenMural mural) {
    thumbnail.redraw();
  }

  @Override
  public Control getControl() {
    return sash;
  }

  @Override
  public void dispose() {
    scene.mural().removeListener(this);
    selection.removeViewer(getViewer());
    super.dispose();
  }
}
