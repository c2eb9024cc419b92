// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

import java.util.function.Consumer;
import muralbench.app.internal.Composition;
import muralbench.app.internal.MonitorProgress;
import muralbench.app.internal.Problems;
import muralbench.base.CancelledException;
import muralbench.base.Finding;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.MuralReader;
import muralbench.setout.MuralSetOut;
import muralbench.setout.SetOut;
import muralbench.setout.SetOutChecks;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.IJobFunction;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Sets a draft out in the background, a moment after the last change, and says how it came out. */
final class SetOutHint {
  /**
   * How a draft sets out.
   *
   * @param words the counts, or empty
   * @param problem why it cannot be set out, or null
   * @param warning what should not stay as it is though it can be set out, or null
   */
  record Answer(String words, String problem, String warning) {}

  private static final Messages TEXTS = Messages.of(SetOutHint.class);
  private static final long PAUSE = 200;
  private static final String OVERLAP = "panels.overlap";

  private final Display display;
  private final Consumer<Answer> listener;
  private Job job;

  SetOutHint(Display display, Consumer<Answer> listener) {
    this.display = display;
    this.listener = listener;
  }

  void look(MuralDraft draft) {
    cancel();
    IJobFunction look = monitor -> run(draft, monitor);
    Job next = Job.create(TEXTS.text("panels.settingOut"), look);
    next.setSystem(true);
    next.schedule(PAUSE);
    job = next;
  }

  void cancel() {
    if (job != null) {
      job.cancel();
    }
  }

  private IStatus run(MuralDraft draft, IProgressMonitor monitor) {
    try {
      Answer answer = answer(draft, monitor);
      display.asyncExec(() -> {
        if (!monitor.isCanceled()) {
          listener.accept(answer);
        }
      });
      return Status.OK_STATUS;
    } catch (CancelledException cancelled) {
      return Status.CANCEL_STATUS;
    }
  }

  private static Answer answer(MuralDraft draft, IProgressMonitor monitor) {
    try {
      MuralSetOut result = SetOut.mural(MuralReader.mural(draft.toMural()), Composition.bonds(),
          new MonitorProgress(monitor));
      return new Answer(TEXTS.text("panels.counts", "whole", result.whole(), "cut", result.cut(), "order",
          result.tilesToOrder()), null, overlap(result));
    } catch (CancelledException cancelled) {
      throw cancelled;
    } catch (InputException | RuntimeException e) {
      return new Answer("", Problems.words(e), null);
    }
  }

  private static String overlap(MuralSetOut result) {
    return SetOutChecks.findings(result).stream().filter(finding -> OVERLAP.equals(finding.code()))
        .map(Finding::message).findFirst().orElse(null);
  }
}
