// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import muralbench.editor.OpenMural;
import org.eclipse.ui.views.properties.PropertySheetPage;

/** The Properties view of a mural; follows changes that are made elsewhere, such as undo. */
public final class MuralPropertiesPage extends PropertySheetPage implements OpenMural.Listener {
  private final OpenMural mural;

  /** A page for a document. */
  public MuralPropertiesPage(OpenMural mural) {
    this.mural = mural;
    mural.addListener(this);
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
