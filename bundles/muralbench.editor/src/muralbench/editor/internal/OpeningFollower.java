// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import muralbench.base.InputException;
import muralbench.editor.internal.field.PieceField;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;

/**
 * Lets the pieces of a panel follow an opening that is dragged. The worker sets the panel out for the place the opening
 * has reached when it begins; places passed in the meantime are left out. The next is begun when the last is shown, so
 * that neither the worker nor the thread of the person has more than one step to do.
 */
public final class OpeningFollower {
  /** Sets the panel out once; called by the worker alone. */
  public interface Step {
    /** The set-out with the opening as it is now asked for. */
    PanelSetOut of(PanelSpec asked) throws InputException;
  }

  private final Step step;
  private final Executor worker;
  private final Executor owner;
  private final Consumer<Optional<PieceField>> shown;
  private PieceField last;
  private PanelSpec wanted;
  private PanelSpec asked;
  private boolean working;
  private boolean ended;

  /**
   * A follower; nothing is computed before {@link #to}.
   *
   * @param worker runs the steps
   * @param owner runs what brings their results back, on the thread that calls this object
   * @param shown takes the pieces of each step; none where the opening cannot be
   */
  public OpeningFollower(Step step, Executor worker, Executor owner, Consumer<Optional<PieceField>> shown) {
    this.step = step;
    this.worker = worker;
    this.owner = owner;
    this.shown = shown;
  }

  /** Says how the panel is with the opening where it is now. */
  public void to(PanelSpec panel) {
    wanted = panel.equals(asked) ? null : panel;
    next();
  }

  /** Ends the drag: nothing is shown any more. */
  public void end() {
    ended = true;
    wanted = null;
  }

  private void next() {
    if (wanted != null && !working) {
      PanelSpec now = wanted;
      asked = now;
      wanted = null;
      working = true;
      worker.execute(() -> {
        Optional<PieceField> field = field(now);
        owner.execute(() -> arrived(field));
      });
    }
  }

  private void arrived(Optional<PieceField> field) {
    working = false;
    if (!ended) {
      shown.accept(field);
      next();
    }
  }

  /** Runs in the worker, one step at a time. */
  private Optional<PieceField> field(PanelSpec now) {
    try {
      last = new PieceField(step.of(now), Optional.ofNullable(last));
      return Optional.of(last);
    } catch (InputException | RuntimeException e) {
      // Half-way through a drag a panel may be impossible; what stays impossible is reported after the drop.
      return Optional.empty();
    }
  }
}
