// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.internal;

import java.util.HashMap;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSetOut;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.BondRegistry;

/** Sets out panels one after the other; what one of them takes from another is made only once. */
public final class Layings {
  private final BondRegistry bonds;
  private final LengthUnit units;
  private final Progress progress;
  private final Map<PanelSpec, PanelSetOut> panels = new HashMap<>();
  private final Map<OriginSpec.Shared, FieldLaying.Field> fields = new HashMap<>();

  /**
   * Nothing laid yet.
   *
   * @param units the units in which errors give lengths
   */
  public Layings(BondRegistry bonds, LengthUnit units, Progress progress) {
    this.bonds = bonds;
    this.units = units;
    this.progress = progress;
  }

  /**
   * The set-out of a panel.
   *
   * @throws InputException if the panel cannot be set out
   */
  public PanelSetOut of(PanelSpec panel) throws InputException {
    PanelSetOut laid = panels.get(panel);
    if (laid == null) {
      laid = new PanelEngine(panel, units).setOut(this);
      panels.put(panel, laid);
    }
    return laid;
  }

  /** The field that a panel is part of. */
  FieldLaying.Field field(PanelSpec panel, OriginSpec.Shared shared) throws InputException {
    FieldLaying.Field field = fields.get(shared);
    if (field == null) {
      field = new FieldLaying(panel, shared, this).field();
      fields.put(shared, field);
    }
    return field;
  }

  BondRegistry bonds() {
    return bonds;
  }

  LengthUnit units() {
    return units;
  }

  Progress progress() {
    return progress;
  }
}
