// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import muralbench.editor.OpenMural;
import org.eclipse.ui.views.properties.IPropertySheetEntry;
import org.eclipse.ui.views.properties.PropertySheetPage;
import org.eclipse.ui.views.properties.PropertySheetSorter;

/** The Properties view of a mural; follows changes that are made elsewhere, such as undo. */
public final class MuralPropertiesPage extends PropertySheetPage implements OpenMural.Listener {
  private final OpenMural mural;

  /** A page for a document. */
  public MuralPropertiesPage(OpenMural mural) {
    this.mural = mural;
    mural.addListener(this);
    setSorter(new InOrder());
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

  @Override
  public void modelChanged(OpenMural changed) {
    refreshIfThere();
  }

  @Override
  public void setOutChanged(OpenMural changed) {
    refreshIfThere();
  }

  private void refreshIfThere() {
    if (getControl() != null && !getControl().isDisposed()) {
      refresh();
    }
  }

  @Override
  public void dispose() {
    mural.removeListener(this);
    super.dispose();
  }
}
