// SPDX-License-Identifier: EPL-2.0
package muralbench.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import muralbench.base.Finding;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.editor.internal.LiveSetOut;
import muralbench.model.DisplayUnits;
import muralbench.model.Mural;
import muralbench.model.Panel;
import muralbench.model.file.MuralFile;
import muralbench.setout.MuralSetOut;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.BondRegistry;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CommandStackEvent;

/**
 * One open mural: the model, the file it came from, its undo history and a set-out that follows every change. All
 * methods are for the thread that owns the document (in the workbench the user interface thread).
 */
public final class OpenMural {
  /** Hears what happens to an open mural, on the thread that owns it. */
  public interface Listener {
    /** A command changed the model. */
    default void modelChanged(OpenMural mural) {}

    /** The set-out of at least one panel, or the findings, are new. */
    default void setOutChanged(OpenMural mural) {}

    /** The file or the dirty mark changed. */
    default void stateChanged(OpenMural mural) {}
  }

  private final Mural mural;
  private final CommandStack commandStack = new CommandStack();
  private final List<Listener> listeners = new CopyOnWriteArrayList<>();
  private final LiveSetOut live;
  private final Executor worker;
  private final Executor owner;
  private Path file;
  private boolean keptElsewhere;

  private OpenMural(Mural mural, Path file, BondRegistry bonds, Executor worker, Executor owner) {
    this.mural = Objects.requireNonNull(mural, "mural");
    this.file = file;
    this.worker = worker;
    this.owner = owner;
    this.live = new LiveSetOut(mural, bonds, worker, owner, () -> tell(listener -> listener.setOutChanged(this)));
    commandStack.addCommandStackEventListener(this::stackChanged);
    live.modelChanged();
  }

  /**
   * Opens a mural.
   *
   * @param mural the model, from now on changed only by commands on {@link #commandStack()}
   * @param file where it was read from, or null for a new one
   * @param bonds the laying patterns known
   * @param worker runs set-outs that take long
   * @param owner runs what brings their results back, on the thread that owns the document
   */
  public static OpenMural of(Mural mural, Path file, BondRegistry bonds, Executor worker, Executor owner) {
    return new OpenMural(mural, file, bonds, worker, owner);
  }

  /** The model. */
  public Mural mural() {
    return mural;
  }

  /** Its file; none while it was never saved. */
  public Optional<Path> file() {
    return Optional.ofNullable(file);
  }

  /** The undo history; every change to the model goes through it. */
  public CommandStack commandStack() {
    return commandStack;
  }

  /** Runs a command through the undo history. */
  public void execute(Command command) {
    commandStack.execute(command);
  }

  /** The units in which the mural's lengths are shown and typed. */
  public LengthUnit units() {
    return mural.getUnits() == DisplayUnits.MILLIMETRES ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
  }

  /** The laying patterns known. */
  public BondRegistry bonds() {
    return live.bonds();
  }

  /** Whether there is something to save. */
  public boolean dirty() {
    return file == null && !keptElsewhere || commandStack.isDirty();
  }

  /** Says that the mural, though it has no file, can be had again at any time and needs no saving until it changes. */
  public void keptElsewhere() {
    keptElsewhere = true;
  }

  /** Whether a set-out is still being computed, so that {@link #setOut()} lacks panels that will come. */
  public boolean busy() {
    return live.busy();
  }

  /** The set-out of all panels that can be set out and are ready, in the order of the mural. */
  public MuralSetOut setOut() {
    return live.setOut();
  }

  /** The set-out of one panel; none while it is being computed or if the panel cannot be set out. */
  public Optional<PanelSetOut> setOut(Panel panel) {
    return live.setOut(panel);
  }

  /** Why a panel cannot be set out. */
  public Optional<InputException> problem(Panel panel) {
    return live.problem(panel);
  }

  /** What is asked of a panel, whether it is set out already or not; none if it cannot be read. */
  public Optional<PanelSpec> asked(Panel panel) {
    return live.asked(panel);
  }

  /** Runs what takes long beside the person's work. */
  public Executor worker() {
    return worker;
  }

  /** Runs what brings results of the {@link #worker()} back, on the thread that owns the document. */
  public Executor owner() {
    return owner;
  }

  /**
   * What cannot be set out (code {@code input}), then what the checks found, heaviest first. Large murals are checked by
   * the worker; until it is done what was found before stands, and listeners are told then.
   */
  public List<Finding> findings() {
    return live.findings();
  }

  /**
   * Saves to the file it came from.
   *
   * @throws IOException if it cannot be written; the old file is then untouched
   * @throws IllegalStateException if there is no file yet
   */
  public void save() throws IOException {
    saveAs(file().orElseThrow(IllegalStateException::new));
  }

  /**
   * Saves to another file, which becomes the file of this mural.
   *
   * @throws IOException if it cannot be written; an old file of that name is then untouched
   */
  public void saveAs(Path target) throws IOException {
    MuralFile.write(mural, target);
    file = target;
    commandStack.markSaveLocation();
    tell(listener -> listener.stateChanged(this));
  }

  /** Adds a listener. */
  public void addListener(Listener listener) {
    listeners.add(listener);
  }

  /** Removes a listener. */
  public void removeListener(Listener listener) {
    listeners.remove(listener);
  }

  /** Ends what is still being computed and forgets the undo history. */
  public void close() {
    live.close();
    listeners.clear();
    commandStack.dispose();
  }

  private void stackChanged(CommandStackEvent event) {
    if (event.isPostChangeEvent()) {
      live.modelChanged();
      tell(listener -> listener.modelChanged(this));
      tell(listener -> listener.stateChanged(this));
    }
  }

  private void tell(Consumer<Listener> message) {
    listeners.forEach(message);
  }
}
