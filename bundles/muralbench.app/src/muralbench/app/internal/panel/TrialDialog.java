// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.Locale;
import java.util.Optional;
import muralbench.base.length.LengthUnit;
import muralbench.editor.PanelPreview;
import muralbench.setout.PanelSetOut;
import muralbench.setout.bond.BondRegistry;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;

/** Changes a panel that is set out beside the user interface and shown as it changes. */
abstract class TrialDialog extends TitleAreaDialog {
  private final String apply;
  private PanelPreview preview;
  private PanelTrial trial;

  /** @param apply text of the button that applies the change */
  TrialDialog(Shell parent, String apply) {
    super(parent);
    this.apply = apply;
    setShellStyle(getShellStyle() | SWT.RESIZE);
  }

  /** Makes what sets the panel out; the first thing a dialog area does. */
  final void startTrial(Composite parent, BondRegistry bonds, LengthUnit units) {
    trial = new PanelTrial(parent.getDisplay(), bonds, units, this::accept, this::refuse);
  }

  /** Makes the picture of the panel. */
  final PanelPreview addPreview(Composite area) {
    preview = new PanelPreview(area);
    return preview;
  }

  final PanelTrial trial() {
    return trial;
  }

  final PanelPreview preview() {
    return preview;
  }

  /** Takes the set-out of the last change. */
  abstract void accept(PanelSetOut made);

  /** Shows why the last change cannot be laid. */
  final void refuse(String problem) {
    preview.show(Optional.empty());
    setErrorMessage(problem.substring(0, 1).toUpperCase(Locale.ROOT) + problem.substring(1));
  }

  /** Lets the change be applied, or not. */
  final void allow(boolean good) {
    if (getButton(IDialogConstants.OK_ID) != null) {
      getButton(IDialogConstants.OK_ID).setEnabled(good);
    }
  }

  @Override
  protected void createButtonsForButtonBar(Composite parent) {
    createButton(parent, IDialogConstants.OK_ID, apply, true);
    createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
  }

  @Override
  public boolean close() {
    trial.close();
    return super.close();
  }
}
