// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import muralbench.base.InputException;
import muralbench.editor.internal.field.PieceField;
import muralbench.setout.OpeningDrag;
import muralbench.setout.PanelSetOut;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Contour;

/**
 * Lets the pieces of a panel follow an opening that is dragged. The worker sets the panel out for the place the opening
 * has reached when it begins; places passed in the meantime are left out. The next is begun when the last is shown, so
 * that neither the worker nor the thread of the person has more than one step to do.
 */
public final class OpeningFollower {
  private final PanelSetOut begun;
  private final String opening;
  private final BondRegistry bonds;
  private final Executor worker;
  private final Executor owner;
  private final Consumer<Optional<PieceField>> shown;
  private OpeningDrag drag;
  private PieceField last;
  private Contour wanted;
  private Contour asked;
  private boolean working;
  private boolean ended;

  /**
   * A follower; nothing is computed before {@link #to}.
   *
   * @param begun the panel before the drag
   * @param opening id of the opening
   * @param worker runs the steps
   * @param owner runs what brings their results back, on the thread that calls this object
   * @param shown takes the pieces of each step; none where the opening cannot be
   */
  public OpeningFollower(PanelSetOut begun, String opening, BondRegistry bonds, Executor worker, Executor owner,
      Consumer<Optional<PieceField>> shown) {
    this.begun = begun;
    this.opening = opening;
    this.bonds = bonds;
    this.worker = worker;
    this.owner = owner;
    this.shown = shown;
  }

  /** Says where the opening is now. */
  public void to(Contour outline) {
    wanted = outline.equals(asked) ? null : outline;
    next();
  }

  /** Ends the drag: nothing is shown any more. */
  public void end() {
    ended = true;
    wanted = null;
  }

  private void next() {
    if (wanted != null && !working) {
      Contour outline = wanted;
      asked = outline;
      wanted = null;
      working = true;
      worker.execute(() -> {
        Optional<PieceField> field = field(outline);
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
  private Optional<PieceField> field(Contour outline) {
    try {
      if (drag == null) {
        drag = OpeningDrag.of(begun, opening, bonds);
      }
      last = new PieceField(drag.moved(outline), Optional.ofNullable(last));
      return Optional.of(last);
    } catch (InputException | RuntimeException e) {
      // Half-way through a drag a panel may be impossible; what stays impossible is reported after the drop.
      return Optional.empty();
    }
  }
}
