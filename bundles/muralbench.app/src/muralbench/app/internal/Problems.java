// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal;

import java.io.IOException;
import muralbench.base.InputException;
import muralbench.base.Messages;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

/** Tells a person in plain words that something did not work; the details go to the log. */
public final class Problems {
  private static final Messages TEXTS = Messages.of(Problems.class);

  private Problems() {}

  /** Shows a failure in a dialog. */
  public static void show(Shell parent, String title, Throwable failure) {
    MessageDialog.openError(parent, title, words(failure));
  }

  /** What to say about a failure; anything but bad input is logged. */
  public static String words(Throwable failure) {
    if (failure instanceof InputException) {
      return failure.getMessage();
    }
    ILog.of(Problems.class).error(String.valueOf(failure.getMessage()), failure);
    String key = failure instanceof IOException ? "problem.disk" : "problem.ours";
    return TEXTS.text(key, "reason", reason(failure));
  }

  private static String reason(Throwable failure) {
    String message = failure.getLocalizedMessage();
    return message == null || message.isBlank() ? failure.getClass().getSimpleName() : message;
  }
}
