// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import muralbench.app.internal.Problems;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import muralbench.model.Panel;
import muralbench.pattern.work.PatternReader;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;

/** Panel > Bond. */
public final class BondHandler extends PanelHandler {
  @Override
  protected void open(Shell shell, OpenMural mural, Panel panel) {
    try {
      BondDialog dialog = new BondDialog(shell, PatternReader.panel(panel), mural.bonds(), mural.units());
      if (dialog.open() == Window.OK) {
        mural.execute(PanelChange.bond(mural.mural(), panel, dialog.chosen()));
      }
    } catch (InputException e) {
      Problems.show(shell, Messages.of(BondHandler.class).text("bond.title"), e);
    }
  }
}
