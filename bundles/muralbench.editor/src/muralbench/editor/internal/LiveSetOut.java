// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Executor;
import muralbench.base.Finding;
import muralbench.base.InputException;
import muralbench.base.length.LengthUnit;
import muralbench.model.DisplayUnits;
import muralbench.model.Mural;
import muralbench.model.Panel;
import muralbench.pattern.work.PatternReader;
import muralbench.setout.MuralReader;
import muralbench.setout.MuralSetOut;
import muralbench.setout.MuralSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.BondRegistry;

/**
 * Keeps the set-out in step with the model: after each change the panels are read anew and only those whose
 * specification differs are set out, small ones at once, large ones by the worker.
 */
public final class LiveSetOut {
  private final Mural mural;
  private final BondRegistry bonds;
  private final Executor worker;
  private final Executor owner;
  private final Runnable changed;
  private final Map<Panel, PanelTask> tasks = new IdentityHashMap<>();
  private final LiveChecks checks;
  private MuralSetOut setOut;
  private List<Finding> findings;

  /**
   * A live set-out; nothing is computed before {@link #modelChanged()}.
   *
   * @param changed told whenever there is a new result
   */
  public LiveSetOut(Mural mural, BondRegistry bonds, Executor worker, Executor owner, Runnable changed) {
    this.mural = mural;
    this.bonds = Objects.requireNonNull(bonds, "bonds");
    this.worker = worker;
    this.owner = owner;
    this.changed = changed;
    checks = new LiveChecks(worker, owner, () -> {
      findings = null;
      changed.run();
    });
  }

  /** The laying patterns known. */
  public BondRegistry bonds() {
    return bonds;
  }

  /** Brings the set-out in step with the model. */
  public void modelChanged() {
    Map<Panel, PanelTask> before = new IdentityHashMap<>(tasks);
    tasks.clear();
    for (Panel panel : mural.getPanels()) {
      PanelTask fresh = read(panel);
      PanelTask old = before.remove(panel);
      if (old != null && old.sameSpec(fresh)) {
        tasks.put(panel, old);
      } else {
        if (old != null) {
          old.cancel();
        }
        tasks.put(panel, fresh);
        fresh.start(bonds, worker, owner, () -> arrived(panel, fresh));
      }
    }
    before.values().forEach(PanelTask::cancel);
    resultChanged();
  }

  private PanelTask read(Panel panel) {
    LengthUnit units = mural.getUnits() == DisplayUnits.MILLIMETRES ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    try {
      return PanelTask.of(PatternReader.panel(panel), units);
    } catch (InputException e) {
      return PanelTask.failed(e);
    } catch (RuntimeException e) {
      return PanelTask.failed(PanelTask.fault(panel.getId(), e));
    }
  }

  private void arrived(Panel panel, PanelTask task) {
    if (tasks.get(panel) == task) {
      resultChanged();
    }
  }

  private void resultChanged() {
    setOut = null;
    findings = null;
    changed.run();
  }

  /** Whether a panel is still being set out. */
  public boolean busy() {
    return tasks.values().stream().anyMatch(PanelTask::pending);
  }

  /** The set-out of the panels that are ready. */
  public MuralSetOut setOut() {
    if (setOut == null) {
      List<PanelSetOut> ready = new ArrayList<>();
      for (Panel panel : mural.getPanels()) {
        setOut(panel).ifPresent(ready::add);
      }
      List<PanelSpec> specs = ready.stream().map(PanelSetOut::spec).toList();
      setOut = new MuralSetOut(spec(specs), ready);
    }
    return setOut;
  }

  private MuralSpec spec(List<PanelSpec> panels) {
    try {
      return MuralReader.mural(mural, panels);
    } catch (InputException e) {
      // What is wrong is told among the findings; until it is mended the mural has usual spares.
      LengthUnit units = mural.getUnits() == DisplayUnits.MILLIMETRES ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
      String exposure = mural.getSite() == null ? "interior-dry" : mural.getSite().getExposure().getLiteral();
      return new MuralSpec(text(mural.getTitle()), text(mural.getClient()), text(mural.getRevision()), units, exposure,
          panels);
    }
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }

  /** The set-out of a panel, if it is ready. */
  public Optional<PanelSetOut> setOut(Panel panel) {
    return Optional.ofNullable(tasks.get(panel)).flatMap(PanelTask::result);
  }

  /** What is asked of a panel, whether it is set out already or not; none if it cannot be read. */
  public Optional<PanelSpec> asked(Panel panel) {
    return Optional.ofNullable(tasks.get(panel)).flatMap(PanelTask::spec);
  }

  /** Why a panel cannot be set out. */
  public Optional<InputException> problem(Panel panel) {
    return Optional.ofNullable(tasks.get(panel)).flatMap(PanelTask::problem);
  }

  /**
   * Problems of input first, then what the checks found. A large mural is checked by the worker; until that is done, what
   * was found before stands.
   */
  public List<Finding> findings() {
    if (findings == null) {
      List<Finding> all = new ArrayList<>();
      mural.getPanels().forEach(panel -> problem(panel).ifPresent(e -> all.add(LiveChecks.finding(e))));
      if (all.isEmpty()) {
        muralProblem().ifPresent(e -> all.add(LiveChecks.finding(e)));
      }
      all.addAll(checks.of(setOut()));
      findings = List.copyOf(all);
    }
    return findings;
  }

  private Optional<InputException> muralProblem() {
    try {
      PatternReader.mural(mural);
      return Optional.empty();
    } catch (InputException e) {
      return Optional.of(e);
    } catch (RuntimeException e) {
      return Optional.of(PanelTask.fault("", e));
    }
  }

  /** Cancels what is still running. */
  public void close() {
    tasks.values().forEach(PanelTask::cancel);
    tasks.clear();
  }
}
