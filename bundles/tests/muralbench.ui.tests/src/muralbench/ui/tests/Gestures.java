// SPDX-License-Identifier: EPL-2.0
package muralbench.ui.tests;

import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;

/** What a person does with menus and dialogs, done by a test on the thread of the workbench. */
final class Gestures {
  private static final int LOOK_AGAIN = 100;

  private Gestures() {}

  /** Runs a command as a menu or a key would. */
  static void run(String command) {
    try {
      PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
    } catch (Exception e) {
      throw new AssertionError("the command " + command + " cannot be run", e);
    }
  }

  /** The first control of a kind inside another one. */
  static <T extends Control> T find(Control root, Class<T> kind, Predicate<T> wanted) {
    T found = search(root, kind, wanted);
    assertNotNull(found, () -> "there is no such " + kind.getSimpleName());
    return found;
  }

  private static <T extends Control> T search(Control root, Class<T> kind, Predicate<T> wanted) {
    if (kind.isInstance(root) && wanted.test(kind.cast(root))) {
      return kind.cast(root);
    }
    Control[] children = root instanceof Composite composite ? composite.getChildren() : new Control[0];
    return Arrays.stream(children).map(child -> search(child, kind, wanted)).filter(found -> found != null).findFirst()
        .orElse(null);
  }

  /** What a menu of the menu bar reads when it is opened. */
  static List<String> menuTexts(String name) {
    MenuItem menu = Arrays.stream(DesktopTest.page().getWorkbenchWindow().getShell().getMenuBar().getItems())
        .filter(item -> item.getText().replace("&", "").equalsIgnoreCase(name)).findFirst().orElseThrow();
    menu.getMenu().notifyListeners(SWT.Show, new Event());
    return Arrays.stream(menu.getMenu().getItems()).map(MenuItem::getText).toList();
  }

  /** Does something that brings up a dialog, closes the dialog and answers what it said. */
  static String dialogText(String title, Runnable action) {
    StringBuilder told = new StringBuilder();
    boolean[] done = {false};
    Display display = Display.getCurrent();
    display.timerExec(LOOK_AGAIN, new Runnable() {
      @Override
      public void run() {
        Shell dialog = Arrays.stream(display.getShells()).filter(shell -> title.equals(shell.getText())).findFirst()
            .orElse(null);
        if (dialog != null) {
          told.append(text(dialog));
          dialog.close();
        } else if (!done[0]) {
          display.timerExec(LOOK_AGAIN, this);
        }
      }
    });
    action.run();
    done[0] = true;
    return told.toString();
  }

  private static String text(Control control) {
    if (control instanceof Label label) {
      return label.getText();
    }
    if (control instanceof Text field) {
      return field.getText();
    }
    StringBuilder all = new StringBuilder();
    if (control instanceof Composite composite) {
      Arrays.stream(composite.getChildren()).forEach(child -> all.append(text(child)).append(' '));
    }
    return all.toString();
  }
}
