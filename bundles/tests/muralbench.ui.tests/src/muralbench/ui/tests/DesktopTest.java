// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/**
 * A test on the running desktop. It fails when something of ours was logged as an error meanwhile, and leaves no editor
 * behind.
 */
abstract class DesktopTest {
  private static final long LIMIT = 20_000;

  private final List<String> ourErrors = new ArrayList<>();
  private final ILogListener errors = (status, plugin) -> note(status);

  private void note(IStatus status) {
    Throwable thrown = status.getException();
    boolean ours = status.getPlugin().startsWith("muralbench") || thrown != null
        && Arrays.stream(thrown.getStackTrace()).anyMatch(at -> at.getClassName().startsWith("muralbench"));
    if (status.getSeverity() == IStatus.ERROR && ours) {
      ourErrors.add(status + (thrown == null ? "" : " " + Arrays.toString(thrown.getStackTrace())));
    }
  }

  @BeforeEach
  final void listen() {
    Platform.addLogListener(errors);
    await("a window", () -> PlatformUI.getWorkbench().getActiveWorkbenchWindow() != null);
    page().closeAllEditors(false);
    settle();
  }

  @AfterEach
  final void closeAndLookAtTheLog() {
    page().closeAllEditors(false);
    settle();
    Platform.removeLogListener(errors);
    assertEquals(List.of(), ourErrors);
  }

  static Display display() {
    return PlatformUI.getWorkbench().getDisplay();
  }

  static IWorkbenchPage page() {
    return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
  }

  /** Handles all events that wait. */
  static void settle() {
    while (display().readAndDispatch()) {
      continue;
    }
  }

  /** Handles events until something is so; fails if it does not come about. */
  static void await(String what, BooleanSupplier so) {
    long end = System.currentTimeMillis() + LIMIT;
    while (!so.getAsBoolean() && System.currentTimeMillis() < end) {
      if (!display().readAndDispatch()) {
        display().timerExec(20, () -> { });
        display().sleep();
      }
    }
    assertTrue(so.getAsBoolean(), () -> "waited in vain for " + what);
    settle();
  }
}
