// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.parts;

import java.util.Map;
import java.util.Optional;
import muralbench.editor.internal.field.PieceField;
import muralbench.editor.internal.geometry.Frame;
import muralbench.editor.internal.geometry.Placement;
import muralbench.model.Opening;
import muralbench.model.Panel;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A panel as it would become if it or one of its openings were put elsewhere.
 *
 * @param panel a changed copy of the panel
 * @param field its pieces; none if they are not known, or it cannot be set out so
 */
record Preview(Panel panel, Optional<PieceField> field) {
  /** A copy of a panel in which it, or openings in it, are put into other frames. */
  static Panel copy(Panel panel, Map<EObject, Frame> places) {
    Panel copy = EcoreUtil.copy(panel);
    places.forEach((thing, to) -> {
      EObject counterpart =
          thing instanceof Opening ? copy.getOpenings().get(panel.getOpenings().indexOf(thing)) : copy;
      Placement.frame(counterpart).ifPresent(from -> Placement.place(counterpart, from, to));
    });
    return copy;
  }
}
