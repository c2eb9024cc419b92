// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import java.util.Objects;
import muralbench.model.Mural;
import org.eclipse.emf.ecore.change.ChangeDescription;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;
import org.eclipse.gef.commands.Command;

/**
 * A change to a mural that can be undone. Subclasses only make the change; everything they touch in the mural is
 * recorded, and undo and redo apply the record, so that the mural after undo equals the mural before. A change that
 * fails half-way is taken back before the failure is passed on.
 */
public abstract class ModelCommand extends Command {
  private final Mural mural;
  private ChangeDescription record;

  /**
   * A command.
   *
   * @param label what it does, as read in the Edit menu behind Undo
   * @param mural the mural that is changed
   */
  protected ModelCommand(String label, Mural mural) {
    super(Objects.requireNonNull(label, "label"));
    this.mural = Objects.requireNonNull(mural, "mural");
  }

  /** A command that runs {@code change}. */
  public static ModelCommand of(String label, Mural mural, Runnable change) {
    return new ModelCommand(label, mural) {
      @Override
      protected void change() {
        change.run();
      }
    };
  }

  /** The mural that is changed. */
  public final Mural mural() {
    return mural;
  }

  /** Makes the change; called once. */
  protected abstract void change();

  @Override
  public final void execute() {
    ChangeRecorder recorder = new ChangeRecorder(mural);
    boolean done = false;
    try {
      change();
      done = true;
    } finally {
      record = recorder.endRecording();
      recorder.dispose();
      if (!done) {
        record.apply();
      }
    }
  }

  @Override
  public final void undo() {
    record.applyAndReverse();
  }

  @Override
  public final void redo() {
    record.applyAndReverse();
  }
}
