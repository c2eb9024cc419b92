// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.editor.internal.PanelTask;
import muralbench.editor.internal.field.PieceField;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.model.Opening;
import muralbench.model.Panel;
import muralbench.setout.MuralReader;
import muralbench.setout.PanelSpec;
import muralbench.setout.SetOut;
import muralbench.setout.bond.BondRegistry;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A panel as it would become if it or one of its openings were put elsewhere, with its set-out where that is quick.
 *
 * @param panel a changed copy of the panel
 * @param field its pieces; none if it has too many, or cannot be set out so
 */
record Preview(Panel panel, Optional<PieceField> field) {
  /**
   * The preview for a panel in which it, or openings in it, are put into other frames.
   *
   * @param slow gives the pieces of the changed copy if it has too many to be set out at once
   */
  static Preview of(Panel panel, Map<EObject, Frame> places, BondRegistry bonds,
      Function<Panel, Optional<PieceField>> slow) {
    Panel copy = EcoreUtil.copy(panel);
    places.forEach((thing, to) -> {
      EObject counterpart =
          thing instanceof Opening ? copy.getOpenings().get(panel.getOpenings().indexOf(thing)) : copy;
      Placement.frame(counterpart).ifPresent(from -> Placement.place(counterpart, from, to));
    });
    try {
      PanelSpec spec = MuralReader.panel(copy, panel);
      return new Preview(copy, PanelTask.quick(spec)
          ? Optional.of(new PieceField(SetOut.panel(spec, bonds, Progress.NONE))) : slow.apply(copy));
    } catch (InputException e) {
      // Half-way through a drag a panel may be impossible; what stays impossible is reported after the drop.
      return new Preview(copy, Optional.empty());
    }
  }
}
