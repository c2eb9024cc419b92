// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import muralbench.base.CancelledException;
import muralbench.base.InputException;
import muralbench.base.Messages;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.TileSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.geometry.Box;

/** The set-out of one panel for one specification: waiting, done or failed. */
public final class PanelTask {
  /** Up to about this many tiles a set-out is quick enough to be made while the person drags. */
  static final int QUICK_TILES = 1500;

  /** Up to about this many tiles a set-out takes so little time that nobody who drags could tell. */
  static final int INSTANT_TILES = 300;

  private static final Messages TEXTS = Messages.of(PanelTask.class);

  private final PanelSpec spec;
  private final LengthUnit units;
  private final AtomicBoolean cancelled = new AtomicBoolean();
  private PanelSetOut result;
  private InputException problem;

  private PanelTask(PanelSpec spec, LengthUnit units, InputException problem) {
    this.spec = spec;
    this.units = units;
    this.problem = problem;
  }

  /** A set-out to be made; problems are told with lengths in {@code units}. */
  static PanelTask of(PanelSpec spec, LengthUnit units) {
    return new PanelTask(spec, units, null);
  }

  static PanelTask failed(InputException problem) {
    return new PanelTask(null, null, problem);
  }

  /** A failure of our own, told as a problem of the panel so that the rest of the mural stays workable. */
  static InputException fault(String place, RuntimeException fault) {
    return new InputException(place == null ? "" : place, TEXTS.text("fault.problem", "fault", fault.toString()),
        TEXTS.text("fault.remedy"), fault);
  }

  /** Whether the tiles of the panel are few enough for a set-out at once. */
  public static boolean quick(PanelSpec spec) {
    return tiles(spec) <= QUICK_TILES;
  }

  /** Whether the tiles of the panel are so few that it can be set out at once again and again. */
  public static boolean instant(PanelSpec spec) {
    return tiles(spec) <= INSTANT_TILES;
  }

  /** About how many tiles have to be looked at, also of other panels that the panel takes something from. */
  private static double tiles(PanelSpec spec) {
    Box box = spec.outline().box();
    TileSpec tile = spec.tile();
    double own = box.width() * box.height() / ((tile.width() + spec.joint()) * (tile.height() + spec.joint()));
    if (spec.origin() instanceof OriginSpec.Shared shared) {
      return own + shared.panels().stream().mapToDouble(PanelTask::tiles).sum();
    }
    if (spec.origin() instanceof OriginSpec.Level level) {
      return own + tiles(level.with());
    }
    return spec.origin() instanceof OriginSpec.Repeated repeated ? own + tiles(repeated.panel()) : own;
  }

  /** Whether another task would come to the same; a problem is told anew in other units. */
  boolean sameSpec(PanelTask other) {
    return spec != null && spec.equals(other.spec) && (result != null || units == other.units);
  }

  boolean pending() {
    return result == null && problem == null;
  }

  /** What is asked for; none if it cannot be read. */
  Optional<PanelSpec> spec() {
    return Optional.ofNullable(spec);
  }

  Optional<PanelSetOut> result() {
    return Optional.ofNullable(result);
  }

  Optional<InputException> problem() {
    return Optional.ofNullable(problem);
  }

  void start(BondRegistry bonds, Executor worker, Executor owner, Runnable arrived) {
    if (!pending()) {
      return;
    }
    if (quick(spec)) {
      compute(bonds).run();
    } else {
      worker.execute(() -> {
        Runnable bringBack = compute(bonds);
        if (!cancelled.get()) {
          owner.execute(() -> {
            bringBack.run();
            arrived.run();
          });
        }
      });
    }
  }

  private Runnable compute(BondRegistry bonds) {
    try {
      PanelSetOut made = SetOut.panel(spec, bonds, units, stopWhenCancelled());
      return () -> result = made;
    } catch (InputException e) {
      return () -> problem = e;
    } catch (CancelledException e) {
      return () -> { };
    } catch (RuntimeException e) {
      return () -> problem = fault(spec.id(), e);
    }
  }

  void cancel() {
    cancelled.set(true);
  }

  private Progress stopWhenCancelled() {
    return new Progress() {
      @Override
      public void begin(String task, int steps) {}

      @Override
      public void step(int steps) {
        if (cancelled.get()) {
          throw new CancelledException();
        }
      }
    };
  }
}
