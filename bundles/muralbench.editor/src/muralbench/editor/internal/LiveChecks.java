// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import muralbench.base.Finding;
import muralbench.base.Grade;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.setout.MuralSetOut;
import muralbench.setout.SetOutChecks;

/** What the checks find in a set-out: at once where there are few pieces, else by the worker, one set-out at a time. */
final class LiveChecks {
  /** Up to about this many pieces are looked over in less time than a person notices. */
  static final int QUICK_PIECES = 2000;

  private static final Messages TEXTS = Messages.of(LiveChecks.class);

  private final Executor worker;
  private final Executor owner;
  private final Runnable arrived;
  private MuralSetOut checked;
  private List<Finding> found = List.of();
  private boolean working;

  /**
   * Nothing is looked over yet.
   *
   * @param arrived run by the owner when the worker has found something out
   */
  LiveChecks(Executor worker, Executor owner, Runnable arrived) {
    this.worker = worker;
    this.owner = owner;
    this.arrived = arrived;
  }

  /** The findings of a set-out; while the worker looks for them, those of the set-out before. */
  List<Finding> of(MuralSetOut setOut) {
    if (checked != setOut && !working) {
      if (setOut.pieces() <= QUICK_PIECES) {
        keep(setOut, check(setOut));
      } else {
        working = true;
        worker.execute(() -> {
          List<Finding> findings = check(setOut);
          owner.execute(() -> {
            working = false;
            keep(setOut, findings);
            arrived.run();
          });
        });
      }
    }
    return found;
  }

  private void keep(MuralSetOut setOut, List<Finding> findings) {
    checked = setOut;
    found = findings;
  }

  private static List<Finding> check(MuralSetOut setOut) {
    try {
      return SetOutChecks.findings(setOut);
    } catch (RuntimeException e) {
      return List.of(finding(PanelTask.fault("", e)));
    }
  }

  /** What cannot be set out as a finding. */
  static Finding finding(InputException e) {
    return new Finding("input", Grade.ERROR, e.place(), e.problem(), e.remedy(), TEXTS.text("input.source"), Map.of());
  }
}
