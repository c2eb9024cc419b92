// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.panel;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import muralbench.app.internal.Problems;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.bond.BondRegistry;
import org.eclipse.swt.widgets.Display;

/**
 * Sets a panel out beside the user interface while a person changes it in a dialog; what was overtaken by the next
 * change is dropped. To be used on the user interface thread.
 */
final class PanelTrial {
  private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
    Thread thread = new Thread(task, "panel trial");
    thread.setDaemon(true);
    return thread;
  });
  private final BondRegistry bonds;
  private final LengthUnit units;
  private final Consumer<PanelSetOut> good;
  private final Consumer<String> bad;
  private final Display display;
  private volatile PanelSpec asked;

  /**
   * A trial.
   *
   * @param units the units of the lengths in errors
   * @param good takes the set-out of the last change
   * @param bad takes why it cannot be set out
   */
  PanelTrial(Display display, BondRegistry bonds, LengthUnit units, Consumer<PanelSetOut> good,
      Consumer<String> bad) {
    this.display = display;
    this.bonds = bonds;
    this.units = units;
    this.good = good;
    this.bad = bad;
  }

  /** Asks for a set-out. */
  void ask(PanelSpec spec) {
    asked = spec;
    worker.execute(() -> setOut(spec));
  }

  /** Drops what was asked for. */
  void drop() {
    asked = null;
  }

  void close() {
    drop();
    worker.shutdownNow();
  }

  private void setOut(PanelSpec spec) {
    if (spec != asked) {
      return;
    }
    try {
      PanelSetOut made = SetOut.panel(spec, bonds, units, Progress.NONE);
      tell(spec, () -> good.accept(made));
    } catch (InputException e) {
      tell(spec, () -> bad.accept(e.problem() + ". " + e.remedy()));
    } catch (RuntimeException e) {
      tell(spec, () -> bad.accept(Problems.words(e)));
    }
  }

  private void tell(PanelSpec spec, Runnable news) {
    if (!display.isDisposed()) {
      display.asyncExec(() -> {
        if (spec == asked) {
          news.run();
        }
      });
    }
  }
}
