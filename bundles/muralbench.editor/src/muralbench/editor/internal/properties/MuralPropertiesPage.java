// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import muralbench.editor.OpenMural;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.views.properties.IPropertySheetEntry;
import org.eclipse.ui.views.properties.PropertySheetPage;
import org.eclipse.ui.views.properties.PropertySheetSorter;

/** The Properties view of a mural; follows changes that are made elsewhere, such as undo. */
public final class MuralPropertiesPage extends PropertySheetPage implements OpenMural.Listener {
  /** Share of the view that the names of the lines take, percent. */
  private static final int NAMES = 52;

  private final OpenMural mural;
  private final ActionRegistry actions;
  private boolean waiting;

  /** A page for a document whose editor has the given actions. */
  public MuralPropertiesPage(OpenMural mural, ActionRegistry actions) {
    this.mural = mural;
    this.actions = actions;
    mural.addListener(this);
    setSorter(new InOrder());
  }

  /** The names of the lines are longer than the platform has them in mind. */
  @Override
  public void createControl(Composite parent) {
    super.createControl(parent);
    if (getControl() instanceof Tree tree) {
      tree.addListener(SWT.Resize, new Listener() {
        @Override
        public void handleEvent(Event event) {
          int width = tree.getClientArea().width;
          if (width > 0) {
            tree.removeListener(SWT.Resize, this);
            tree.getColumn(0).setWidth(width * NAMES / 100);
            tree.getColumn(1).setWidth(width - width * NAMES / 100);
          }
        }
      });
    }
  }

  /** Leaves the lines and their groups in the order in which they were made, which is the order of the work. */
  private static final class InOrder extends PropertySheetSorter {
    @Override
    public void sort(IPropertySheetEntry[] entries) {
      // They are in order.
    }

    @Override
    public int compareCategories(String left, String right) {
      return 0;
    }
  }

  /** Undo and redo stay those of the mural while this page has the focus. */
  @Override
  public void setActionBars(IActionBars bars) {
    super.setActionBars(bars);
    for (ActionFactory action : new ActionFactory[] {ActionFactory.UNDO, ActionFactory.REDO}) {
      bars.setGlobalActionHandler(action.getId(), actions.getAction(action.getId()));
    }
  }

  @Override
  public void modelChanged(OpenMural changed) {
    refreshSoon();
  }

  @Override
  public void setOutChanged(OpenMural changed) {
    refreshSoon();
  }

  /** Later and once: a refresh in the middle of an edit would take the edit for done and make it again. */
  private void refreshSoon() {
    if (there() && !waiting) {
      waiting = true;
      getControl().getDisplay().asyncExec(() -> {
        waiting = false;
        if (there()) {
          refresh();
        }
      });
    }
  }

  private boolean there() {
    return getControl() != null && !getControl().isDisposed();
  }

  @Override
  public void dispose() {
    mural.removeListener(this);
    super.dispose();
  }
}
