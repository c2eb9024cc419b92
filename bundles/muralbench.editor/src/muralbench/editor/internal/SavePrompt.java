// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import muralbench.base.Messages;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.ISaveablePart2;

/** Asks whether to save a mural that is being closed. */
public final class SavePrompt {
  private static final Messages TEXTS = Messages.of(SavePrompt.class);
  private static final int[] ANSWERS = {ISaveablePart2.YES, ISaveablePart2.NO, ISaveablePart2.CANCEL};

  private SavePrompt() {}

  /** The answer, as {@link ISaveablePart2} has it; a dialog that is closed without one is a cancel. */
  public static int ask(Shell shell, String name) {
    int pressed = MessageDialog.open(MessageDialog.QUESTION, shell, TEXTS.text("close.title"),
        TEXTS.text("close.question", "name", name), SWT.NONE, TEXTS.text("close.save"), TEXTS.text("close.discard"),
        TEXTS.text("close.cancel"));
    return pressed >= 0 && pressed < ANSWERS.length ? ANSWERS[pressed] : ISaveablePart2.CANCEL;
  }
}
